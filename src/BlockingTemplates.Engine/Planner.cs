using BlockingTemplates.Engine.Fabrics;
using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Projects;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Engine;

/// <summary>Runs the stages: from what the maker asked for to the finished plan.</summary>
public static class Planner
{
    /// <summary>The plan, or null where findings hold a problem, before or after.</summary>
    /// <param name="project">What the maker asked for.</param>
    /// <param name="style">How numbers are set on the guide.</param>
    /// <param name="findings">Takes problems and notes; those of reading may stand in it already.</param>
    /// <param name="computation">How much of the cloth is computed, who is told, what ends it; everything unless given.</param>
    /// <param name="mirrorOf">The pins of the piece that this one mirrors: its marks are then their mirror image; null for a piece of its own.</param>
    public static Plan? Plan(Project project, NumberStyle style, Findings findings, Computation? computation = null, PinPlan? mirrorOf = null)
    {
        ArgumentNullException.ThrowIfNull(project);
        ArgumentNullException.ThrowIfNull(findings);
        var request = new PieceRequest(
            project.Kind, project.Finished, project.Unblocked, project.Edges, project.FaceUp, project.MeasuredFaceUp, project.EvenOut, project.Fabric)
        {
            IsMirrored = project.IsMirrored,
        };
        if (PieceMaker.Make(request, findings) is not { } piece || PinPlanner.Placed(piece, project.Pins, findings) is not { } pins)
            return null;
        if (mirrorOf is not null)
            pins = PinPlanner.MirrorOf(mirrorOf, pins, piece);
        using var study = findings.IsClean ? ClothStudy.Of(piece, project.Pins, pins, computation ?? Computation.Whole, findings, mirrorOf is not null) : null;
        pins = study?.Pins ?? pins;
        EdgePlans.AddNotes(pins, piece, project.Pins, findings);
        if (project.Pins.Owned is { } owned && owned < pins.Marks.Count)
            findings.Note("pins.owned", $"The plan takes {pins.Marks.Count} pins and {owned} are at hand: {pins.Marks.Count - owned} are missing.", "Get more, or plan a wider spacing.");
        SettingNotes(project, findings);
        var field = MatField.Plan(pins, project.Mats, units: project.Units);
        foreach (var note in field.Notes)
            findings.Note(note.Place, note.What, note.Do);
        var cloth = study?.Settle(field.Pins, findings);
        List<Guide> guides = [];
        foreach (var paper in project.Sheets.Papers)
        {
            if (GuidePlanner.Plan(field.Pins, paper, project.Sheets, style, findings) is { } guide)
                guides.Add(guide);
        }

        if (!findings.IsClean)
            return null;
        var plot = PlotPlanner.Plan(field.Pins, project.Sheets.Use, style, findings);
        return new(project, piece, field.Pins, field.Layout, guides, plot, findings.Notes) { Cloth = cloth };
    }

    /// <summary>Notes where the way of setting asked for does not go with the care label or the fibre.</summary>
    private static void SettingNotes(Project project, Findings findings)
    {
        if (project.Set.Method != SetMethod.Steam)
            return;
        if (project.Set.LabelForbidsSteam)
            findings.Note("set.method", "The care label forbids steam, so this plan does not offer it.", "Set the piece by wetting or spraying.");
        else if (project.Fabric.Fibre is { SteamAllowed: false } fibre)
            findings.Note("set.method", $"Steam changes {fibre.Name} for good, so this plan does not offer it.", "Set the piece by wetting or spraying; try a swatch first.");
    }
}
