using System.Buffers;
using System.Globalization;

namespace BlockingTemplates.Engine.Measure;

/// <summary>Goes once through a text, of at most <see cref="LengthText.LongestText"/> characters, that should be a length.</summary>
internal sealed class LengthScanner(string text)
{
    private static readonly SearchValues<char> Commas = SearchValues.Create(",\u060C\u066B\u066C\uFF0C");

    private readonly string _plain = string.Concat(text.Select(Plain)).Trim();
    private int _at;

    private char Here => At(_at);

    /// <summary>Null and the length, or why there is none.</summary>
    public LengthRefusal? Read(LengthUnit fileUnit, out Length length)
    {
        length = Length.Zero;
        if (_plain.Length == 0)
            return new("The text is empty.", "Write a number and its unit, such as \"1.24 m\".");
        if (text.AsSpan().ContainsAny(Commas))
        {
            return new(
                $"{Quoted} has a comma, which may mark decimals or thousands.",
                "Write decimals with a point and thousands with nothing between, such as \"1.24 m\" or \"1250 mm\".");
        }

        var negative = Here == '-';
        if (Here is '-' or '+')
            _at++;
        var refusal = ReadParts(fileUnit, out var size, out var metric);
        if (refusal is not null)
            return refusal;
        if (negative)
            size = -size;
        length = metric ? Length.FromMillimetres(size) : Length.FromInches(size);
        return null;
    }

    private LengthRefusal? ReadParts(LengthUnit fileUnit, out double size, out bool metric)
    {
        size = 0;
        metric = false;
        WrittenUnit? before = null;
        var whole = true;
        while (before is null || _at < _plain.Length)
        {
            if (!whole)
                return new($"{Quoted} goes on after a part that is not whole.", "Write the fraction in the last part, such as \"4 ft 3/4 in\".");
            SkipSpaces();
            if (ReadQuantity(out var value, out whole) is { } refusal)
                return refusal;
            SkipSpaces();
            if (ReadUnit(out var unit) is { } unknown)
                return unknown;
            if (unit is null)
            {
                if (before is not null || _at < _plain.Length)
                    return Stray();
                unit = WrittenUnit.Of(fileUnit);
            }

            if (before is not null && before.IsMetric != unit.IsMetric)
                return new($"{Quoted} mixes metric units with inches, feet or yards.", "Write the whole length in one of them.");
            if (before is not null && before.Size <= unit.Size)
                return new($"{Quoted} does not go from the greater unit to the smaller.", "Write each unit once, the greatest first, such as \"1 yd 4 in\".");

            size += value * unit.Size;
            metric = unit.IsMetric;
            before = unit;
            if (Here == '-' && BeginsQuantity(At(_at + 1)))
                _at++;
            SkipSpaces();
        }

        return null;
    }

    private LengthRefusal? ReadQuantity(out double value, out bool whole)
    {
        value = 0;
        whole = false;
        if (VulgarFraction.Of(Here) is { } alone)
        {
            value = alone;
            _at++;
            return null;
        }

        var number = Digits(withPoint: true);
        if (number.Length == 0)
            return Stray();
        if (number.Count(c => c == '.') > 1 || number[^1] == '.')
            return new($"{Quoted} has a point in the wrong place.", "Write decimals such as 1.24.");
        value = Parsed(number);
        whole = !number.Contains('.', StringComparison.Ordinal);
        if (Here == '/')
        {
            whole = false;
            return ReadDenominator(number, ref value);
        }

        return ReadFractionAfter(ref value, ref whole);
    }

    // After "48": nothing, "¾", " 3/4" or "-3/4".
    private LengthRefusal? ReadFractionAfter(ref double value, ref bool whole)
    {
        var next = _at;
        while (At(next) == ' ')
            next++;
        if (next == _at && At(next) == '-')
            next++;
        if (!BeginsQuantity(At(next)))
            return null;
        _at = next;
        double fraction;
        if (VulgarFraction.Of(Here) is { } vulgar)
        {
            fraction = vulgar;
            _at++;
        }
        else
        {
            var numerator = Digits(withPoint: true);
            fraction = Parsed(numerator.Replace(".", "", StringComparison.Ordinal));
            if (Here != '/')
            {
                return new(
                    $"{Quoted} has two numbers side by side.",
                    "Write a fraction such as \"48 3/4\", a decimal such as \"48.3\", and thousands with nothing between.");
            }

            if (ReadDenominator(numerator, ref fraction) is { } refusal)
                return refusal;
        }

        if (!whole)
            return new($"{Quoted} has decimals and a fraction.", "Write one of them, such as 48.75 or \"48 3/4\".");
        if (fraction >= 1)
            return new($"{Quoted} has a fraction of 1 or more after a whole number.", "Write a smaller fraction, such as \"48 3/4\".");
        value += fraction;
        whole = false;
        return null;
    }

    private LengthRefusal? ReadDenominator(string numerator, ref double value)
    {
        _at++;
        var denominator = Digits(withPoint: true);
        if (denominator.Length == 0 || (numerator + denominator).Contains('.', StringComparison.Ordinal))
            return new($"{Quoted} has a fraction that is not two whole numbers.", "Write a fraction such as \"3/4\".");
        var by = Parsed(denominator);
        if (by == 0)
            return new($"{Quoted} divides by zero.", "Write a fraction such as \"3/4\".");
        value /= by;
        return null;
    }

    private LengthRefusal? ReadUnit(out WrittenUnit? unit)
    {
        unit = null;
        var start = _at;
        if (Here is '"' or '\'')
            _at += Here == '\'' && At(_at + 1) == '\'' ? 2 : 1;
        else
        {
            while (char.IsLetter(Here))
                _at++;
        }

        if (_at == start)
            return null;
        var name = _plain[start.._at];
        unit = WrittenUnit.Named(name);
        if (unit is null)
            return new($"{Quoted} has the unit \"{name}\", which is not known.", "Write mm, cm, m, in, ft or yd.");
        if (Here == '.' && char.IsLetter(name[^1]))
            _at++;
        return null;
    }

    private LengthRefusal Stray() => _at < _plain.Length
        ? new($"{Quoted} has \"{Shown(_plain[_at])}\" where a length cannot have it.", "Write a number and its unit, such as \"48 3/4 in\" or \"1.24 m\".")
        : _at > 0 && _plain.Any(char.IsAsciiDigit)
            ? new($"{Quoted} ends with a number that has no unit.", "Write a unit behind each part, such as \"3 ft 6 in\".")
            : new($"{Quoted} has no number.", "Write a number and its unit, such as \"48 3/4 in\" or \"1.24 m\".");

    private string Digits(bool withPoint)
    {
        var start = _at;
        while (char.IsAsciiDigit(Here) || (withPoint && Here == '.'))
            _at++;
        return _plain[start.._at];
    }

    private void SkipSpaces()
    {
        while (Here == ' ')
            _at++;
    }

    private char At(int index) => index < _plain.Length ? _plain[index] : '\0';

    private string Quoted => $"\"{string.Concat(text.Trim().Select(Shown))}\"";

    private static bool BeginsQuantity(char c) => char.IsAsciiDigit(c) || c == '.' || VulgarFraction.Of(c) is not null;

    private static double Parsed(string digits) =>
        digits.Length == 0 ? 0 : double.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static char Shown(char c) => char.IsControl(c) || char.IsSurrogate(c) ? '\uFFFD' : c;

    private static char Plain(char c) => c switch
    {
        _ when char.IsWhiteSpace(c) => ' ',
        '\u2212' or '\u2010' or '\u2011' or '\u2013' => '-',
        '\u2044' or '\u2215' => '/',
        '\u2032' or '\u2018' or '\u2019' => '\'',
        '\u2033' or '\u201C' or '\u201D' => '"',
        _ => c,
    };
}
