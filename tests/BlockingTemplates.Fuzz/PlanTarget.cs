using System.Runtime.CompilerServices;
using BlockingTemplates.Drawing.Guides;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Measure;

namespace BlockingTemplates.Fuzz;

/// <summary>Reading and, where there is no problem, planning: any bytes give problems or a plan.</summary>
/// <remarks>Planning works on all cores, so what its counters count depends on chance: the cases of this target are not the same in every run.</remarks>
internal static class PlanTarget
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static FuzzTarget Create() => new("plans", ReaderTarget.Seeds(), ReaderTarget.Words(), 6000, 60, Check);

    private static void Check(byte[] bytes)
    {
        var reading = ReaderTarget.Read(bytes);
        if (reading.Project is not { } project || !reading.Findings.IsClean)
            return;
        var findings = new Findings(project.Units);
        if (Planner.Plan(project, NumberPicture.Style, findings, Computation.GeometryOnly) is null == findings.IsClean)
            throw new InvalidOperationException("Neither a plan nor a problem, or both.");
    }
}
