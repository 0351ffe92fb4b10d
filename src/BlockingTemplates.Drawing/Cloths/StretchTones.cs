using BlockingTemplates.Drawing.Overviews;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Engine.Pins.Settling;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Cloths;

/// <summary>The inside of a piece painted in the greys of its stretch.</summary>
internal static class StretchTones
{
    /// <summary>Height of the strips that are painted: they end on the outline to half of it, under the outline's line.</summary>
    private const double StripMm = 0.45;

    /// <summary>The tones, the lightest first, each painted over those before it; one path a tone, so that no seams show.</summary>
    /// <param name="map">The stretch.</param>
    /// <param name="value">Which stretch.</param>
    /// <param name="scale">Its greys.</param>
    /// <param name="area">The inside of the outline on the page.</param>
    /// <param name="placing">How the frame lies on the page.</param>
    /// <param name="free">Boxes of the page to leave unpainted.</param>
    public static IEnumerable<Element> Of(StretchMap map, Func<StretchCell, double> value, ToneScale scale, InsideArea area, FramePlacing placing, IReadOnlyList<Box>? free = null)
    {
        var paths = Enumerable.Range(0, scale.Bounds.Count + 1).Select(_ => new List<PathStep>()).ToList();
        if (map.Cells.Count == 0)
            return [];
        var field = new StretchField(map, value);
        var strips = Math.Max(1, (int)Math.Ceiling(area.Box.Height / StripMm));
        var height = area.Box.Height / strips;
        for (var k = 0; k < strips; k++)
        {
            var y = area.Box.Lower + ((k + 0.5) * height);
            foreach (var (from, to) in area.At(y))
            {
                foreach (var (left, right) in Without(from, to, y, free ?? []))
                    Strip(left, right, y, height);
            }
        }

        return paths.Select((p, tone) => (Path: p, Tone: tone)).Where(p => p.Path.Count > 0).Select(p => new PathElement(p.Path, null, new Fill(scale.Grey(p.Tone))));

        void Strip(double left, double right, double y, double height)
        {
            var steps = Math.Max(1, (int)Math.Ceiling((right - left) / StripMm));
            var tones = new int[steps];
            for (var i = 0; i < steps; i++)
                tones[i] = scale.Tone(field.At(placing.Off(new(At(i + 0.5), y))));
            for (var tone = 0; tone < paths.Count; tone++)
            {
                for (var i = 0; i < steps; i++)
                {
                    if (tones[i] < tone)
                        continue;
                    var start = i;
                    while (i + 1 < steps && tones[i + 1] >= tone)
                        i++;
                    paths[tone].AddRange(PathSteps.Rectangle(new(At(start), y - (height / 2), At(i + 1), y + (height / 2))));
                }
            }

            double At(double i) => left + ((right - left) * i / steps);
        }
    }

    /// <summary>A part of a level line less what boxes take of it.</summary>
    private static IEnumerable<(double Left, double Right)> Without(double from, double to, double y, IReadOnlyList<Box> boxes)
    {
        var left = from;
        foreach (var box in boxes.Where(b => y > b.Lower && y < b.Upper && b.Right > from && b.Left < to).OrderBy(b => b.Left))
        {
            if (box.Left > left)
                yield return (left, box.Left);
            left = Math.Max(left, box.Right);
        }

        if (left < to)
            yield return (left, to);
    }
}
