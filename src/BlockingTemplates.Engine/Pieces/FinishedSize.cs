using BlockingTemplates.Engine.Measure;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Pieces;

/// <summary>Reads the named finished measurements of a kind.</summary>
public static class FinishedSize
{
    /// <summary>All of a kind's finished measurements in millimetres, in its order, or null after adding a problem for each missing one.</summary>
    public static IReadOnlyList<double>? Read(PieceKind kind, Measurements measured, Findings findings)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var read = true;
        List<double> sizes = [];
        foreach (var size in kind.FinishedSizes)
        {
            if (measured.Sizes.TryGetValue(size.Name, out var length))
            {
                sizes.Add(length.Millimetres);
                continue;
            }

            read = false;
            var path = $"{measured.Path}.{size.Name}";
            if (!measured.Unreadable.Contains(path) && !measured.Unreadable.Contains(measured.Path))
                findings.Problem(path, $"The finished {size.Name} is missing.", $"Write it: {size.HowToTake}.");
        }

        return read ? sizes : null;
    }

    /// <summary>The edge between two corners with the finished bow the maker asked for, or null after adding a problem.</summary>
    public static EdgeCurve? Edge(Measurements measured, string edge, Point from, Point to, Findings findings)
    {
        var bow = measured.Bows.TryGetValue(edge, out var length) ? length.Millimetres : 0;
        if (Math.Abs(bow) <= from.DistanceTo(to) / 2)
            return CircularArc.Between(from, to, bow);
        findings.Problem($"{measured.Path}.bows.{edge}", $"The {edge} edge would bow by more than half its length from corner to corner: an arc past the half circle.", "Give a smaller bow, or use shape \"outline\" with a corner on the arc.");
        return null;
    }
}
