using System.Globalization;

namespace BlockingTemplates.Output.Csv;

/// <summary>One cell of a table: a text, which stays a text in a spreadsheet, or a number.</summary>
public readonly record struct CsvCell
{
    private readonly string? _shown;

    private CsvCell(string shown, bool isNumber)
    {
        _shown = shown;
        IsNumber = isNumber;
    }

    /// <summary>Whether the cell is a number of ours.</summary>
    public bool IsNumber { get; }

    /// <summary>What the cell says.</summary>
    public string Shown => _shown ?? "";

    /// <summary>A cell of any text.</summary>
    public static CsvCell Text(string text) => new(text ?? throw new ArgumentNullException(nameof(text)), isNumber: false);

    /// <summary>A cell with a whole number.</summary>
    public static CsvCell Number(int value) => new(value.ToString(CultureInfo.InvariantCulture), isNumber: true);

    /// <summary>A cell with a number of fixed decimals and a decimal point.</summary>
    /// <param name="value">A finite number.</param>
    /// <param name="decimals">Decimals, 0 to 9.</param>
    public static CsvCell Number(double value, int decimals)
    {
        if (!double.IsFinite(value)) throw new ArgumentOutOfRangeException(nameof(value), "A number in a table is finite.");
        if (decimals is < 0 or > 9) throw new ArgumentOutOfRangeException(nameof(decimals));
        var shown = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        if (shown.StartsWith('-') && shown.AsSpan(1).IndexOfAnyExcept('0', '.') < 0) shown = shown[1..]; // no minus before a zero
        return new(shown, isNumber: true);
    }
}
