using System.Text.Encodings.Web;
using System.Text.Json;
using BlockingTemplates.Drawing.Cautions;
using BlockingTemplates.Engine;
using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Pieces;
using BlockingTemplates.Engine.Pins;
using BlockingTemplates.Engine.Shapes;
using BlockingTemplates.Engine.Sheets;

namespace BlockingTemplates.Output.Json;

/// <summary>The plan as data: plan.json.</summary>
public static class PlanJson
{
    // The file stands by itself and is never pasted into a page, so letters stay letters.
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The bytes of the file, UTF-8.</summary>
    public static byte[] Write(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
            Write(plan, json);
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    private static void Write(Plan plan, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteNumber("format", 1);
        json.WriteString("title", plan.Project.Title);
        if (plan.Project.Size.Length > 0)
            json.WriteString("size", plan.Project.Size);
        if (plan.Project.PieceName.Length > 0)
            json.WriteString("piece", plan.Project.PieceName);
        json.WriteString("units", LengthWords.UnitOf(plan.Project.Units));
        json.WriteString("faceUp", plan.Piece.FaceUp == WorkSide.RightSide ? "right side" : "wrong side");
        json.WriteString("anchor", plan.Pins.Anchor.Name);
        json.Line("finished", plan.FinishedInFrame.Ring());
        json.Line("pinned", plan.Pins.Pinned.Ring());
        json.Line("unblocked", plan.Pins.LayLine?.Ring());
        json.List("edges", plan.Pins.Edges.Select((e, i) => (e, i)), e => Edge(plan, e.e, e.i, json));
        json.List("pins", plan.Pins.Marks, m => Pin(plan, m, json));
        json.WriteStartObject("counts");
        json.WriteNumber("pin", plan.Pins.Marks.Count);
        json.WriteNumber("comb", 0);
        json.WriteNumber("wire", 0);
        json.WriteNumber("spare", 0);
        json.WriteEndObject();
        Mats(plan, json);
        json.List("sheets", plan.Guides, g => Sheets(g, json));
        FabricJson.Write(plan, json);
        json.List("notes", plan.Notes, n => Note(n, json));
        json.List("cautions", CautionRules.For(plan.Project.Fabric.Fibre, plan.Project.Set, plan.Project.Sheets.Use), json.WriteStringValue);
        json.WriteEndObject();
    }

    private static void Edge(Plan plan, EdgePlan edge, int index, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("name", edge.Name);
        json.Mm("finishedMm", edge.FinishedMm);
        json.Mm("pinnedMm", edge.PinnedMm);
        json.Mm("unblockedMm", edge.UnblockedMm);
        json.Ratio("stretch", edge.Stretch);
        json.WriteNumber("pins", plan.Pins.Marks.Count(m => m.Edge == index));
        json.WriteString("spacingRule", edge.SpacingRule);
        json.Mm("scallopMm", plan.Cloth?.Edges[index]?.Worst?.ScallopMm);
        json.Mm("mayDipMm", edge.MayDipMm);
        json.YesOrNo("determined", plan.Cloth?.Edges[index]?.IsDetermined);
        json.Line("pinned", plan.Pins.Pinned.Edges[index].Curve.Flatten(Outline.FlatteningMm));
        json.Line("unblocked", plan.Pins.LayLine?.Edges[index].Curve.Flatten(Outline.FlatteningMm));
        json.WriteEndObject();
    }

    private static void Pin(Plan plan, Mark mark, Utf8JsonWriter json)
    {
        var seat = plan.Mats.Seats[mark.Number - 1];
        json.WriteStartObject();
        json.WriteNumber("number", mark.Number);
        json.WriteNumber("round", mark.Round);
        json.WriteString("kind", "pin");
        json.WriteString("edge", plan.Pins.Edges[mark.Edge].Name);
        json.Ratio("fraction", mark.Fraction);
        json.Ratio("count", mark.Count);
        if (mark.Count is null)
            json.WriteNull("of");
        else
            json.WriteString("of", mark.Of == CountedIn.Rows ? "rows" : "stitches");
        json.At("at", mark.At);
        json.At("rest", mark.Rest);
        json.Mm("pullMm", mark.Pull?.Length);
        var inTurn = plan.Cloth?.InTurnOf(mark);
        json.At("restInTurn", inTurn?.Rest);
        json.Mm("pullInTurnMm", inTurn?.PullMm(mark));
        json.YesOrNo("inTurnApproximate", inTurn?.IsApproximate);
        json.Ratio("loadShare", plan.Cloth?.LoadShares[mark.Number - 1]);
        json.WriteString("mat", seat.Mat);
        json.WritePropertyName("onMat");
        json.Pair(seat.OnMat.X, seat.OnMat.Y);
        json.Mm("seamMm", seat.SeamMm);
        json.WriteBoolean("nearSeam", seat.NearSeam);
        json.List("sheets", plan.Guides.SelectMany(g => g.Layout.SheetsShowing(mark.At)).Select(s => s.Name).Distinct(), json.WriteStringValue);
        json.WriteEndObject();
    }

    private static void Mats(Plan plan, Utf8JsonWriter json)
    {
        var mats = plan.Mats;
        json.WriteStartObject("mats");
        json.WritePropertyName("sizeMm");
        json.Pair(mats.PitchX, mats.PitchY);
        json.WriteNumber("count", mats.Mats.Count);
        json.Ratio("turnDegrees", mats.TurnDegrees);
        json.Ratio("pieceTurnDegrees", mats.PieceTurnDegrees);
        json.List("cells", mats.Mats, m =>
        {
            json.WriteStartObject();
            json.WriteString("name", m.Name);
            json.WriteNumber("column", m.Column);
            json.WriteNumber("row", m.Row);
            json.At("at", m.At);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Sheets(Guide guide, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("paper", guide.Paper.Name);
        json.WriteNumber("count", guide.Count);
        json.WriteNumber("joining", guide.Layout.JoiningCount);
        json.WriteBoolean("landscape", guide.Layout.Landscape);
        json.List("pages", guide.Layout.Sheets, s =>
        {
            json.WriteStartObject();
            json.WriteString("name", s.Name);
            json.At("at", new Point(s.Window.Left, s.Window.Lower));
            json.WritePropertyName("size");
            json.Pair(s.Window.Width, s.Window.Height);
            json.WriteBoolean("joining", s.Joining);
            json.WriteEndObject();
        });
        json.WriteEndObject();
    }

    private static void Note(Note note, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("place", note.Place);
        json.WriteString("what", note.What);
        json.WriteString("do", note.Do);
        json.WriteEndObject();
    }
}
