using BlockingTemplates.Engine.Mats;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Guides;

/// <summary>The sides of the mats of a field, each drawn once: seams and outer border.</summary>
internal static class MatSeams
{
    /// <summary>Stretches as long as they run on, lower and left first.</summary>
    public static IEnumerable<(Point From, Point To)> Of(MatLayout mats)
    {
        HashSet<(int Column, int Row)> laid = [.. mats.Mats.Select(m => (m.Column, m.Row))];
        for (var row = 0; row <= mats.Rows; row++)
        {
            foreach (var (first, last) in Stretches(mats.Columns, c => laid.Contains((c, row)) || laid.Contains((c, row - 1))))
                yield return (new(first * mats.PitchX, row * mats.PitchY), new(last * mats.PitchX, row * mats.PitchY));
        }

        for (var column = 0; column <= mats.Columns; column++)
        {
            foreach (var (first, last) in Stretches(mats.Rows, r => laid.Contains((column, r)) || laid.Contains((column - 1, r))))
                yield return (new(column * mats.PitchX, first * mats.PitchY), new(column * mats.PitchX, last * mats.PitchY));
        }
    }

    private static IEnumerable<(int First, int Last)> Stretches(int count, Func<int, bool> isDrawn)
    {
        for (var i = 0; i < count; i++)
        {
            if (!isDrawn(i))
                continue;
            var first = i;
            while (i < count && isDrawn(i))
                i++;
            yield return (first, i);
        }
    }
}
