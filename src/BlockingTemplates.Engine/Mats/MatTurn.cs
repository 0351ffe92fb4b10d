namespace BlockingTemplates.Engine.Mats;

/// <summary>A turn of the mats under the piece, and how both then lie in the frame.</summary>
/// <remarks>
/// Mats lie upright in the frame. The nearest quarter turn is taken up by the mats (width and height exchanged or not), the
/// rest by the piece, which so turns by 45 degrees at most and keeps its lower edge towards the maker.
/// </remarks>
/// <param name="Degrees">Turn of the mats relative to the piece, counter-clockwise, whole degrees from 0 to 179.</param>
internal readonly record struct MatTurn(int Degrees)
{
    private const int Half = 180;
    private const int Quarter = 90;

    /// <summary>Turn of the piece in the frame, counter-clockwise, from -45 to 44 degrees.</summary>
    public int PieceDegrees => (Quarter * Quarters) - Degrees;

    /// <summary>Whether the mats' width lies along y.</summary>
    public bool IsQuarter => Quarters % 2 == 1;

    private int Quarters => (Degrees + (Quarter / 2) - 1) / Quarter;

    /// <summary>The turns that settings allow, each way to lie once (square mats lie the same after every quarter), the least first.</summary>
    public static IReadOnlyList<MatTurn> Of(MatSettings settings)
    {
        var turns = settings.Turns.Distinct().Order().ToArray();
        if (turns.Length == 0 || turns[0] < 0 || turns[^1] >= Half)
            throw new ArgumentException("Mats turn by whole degrees from 0 to 179.", nameof(settings));
        return [.. turns.DistinctBy(t => settings.Width == settings.Height ? t % Quarter : t).Select(t => new MatTurn(t))];
    }
}
