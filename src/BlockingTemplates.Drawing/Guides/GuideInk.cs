using BlockingTemplates.Drawing.Pages;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The lines of the guide: told apart by weight and dash, never by colour.</summary>
internal static class GuideInk
{
    public static Stroke Outline { get; } = new(0.45);

    public static Stroke Cross { get; } = new(0.35);

    public static Stroke Form { get; } = new(0.3);

    public static Stroke Leader { get; } = new(0.2);

    public static Stroke Bar { get; } = new(0.5);

    public static Stroke LayLine { get; } = new(0.35, 0.25, [3, 1.6]);

    public static Stroke LayTick { get; } = new(0.3, 0.25);

    public static Stroke Arrow { get; } = new(0.2, 0.45);

    public static Stroke Seam { get; } = new(0.5, 0.72, [0.5, 2.2]);

    public static Stroke CutLine { get; } = new(0.35, 0, [6, 1.5, 1.5, 1.5]);

    public static Stroke Spine { get; } = new(0.6, 0, [12, 2, 2, 2]);

    public static Stroke CombBar { get; } = new(1);

    public static Stroke Prong { get; } = new(0.35);

    public static Stroke Wire { get; } = new(0.8, 0.6);

    public static Stroke Grid { get; } = new(0.12, 0.75);

    public static Stroke SheetCut { get; } = new(0.25, 0, [4, 2]);

    public static Stroke SheetEdge { get; } = new(0.15, 0.6);

    public static Stroke Rule { get; } = new(0.15, 0.4);

    public static Stroke Scale { get; } = new(0.3);
}
