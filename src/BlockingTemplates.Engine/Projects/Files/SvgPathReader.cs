using System.Globalization;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Engine.Projects.Files;

/// <summary>Reads the data of an SVG path, in its own units, y as written.</summary>
/// <remarks>
/// Source: Scalable Vector Graphics (SVG) 1.1, 2nd ed., W3C 2011, section 8.3 (grammar in 8.3.9). Strict: anything outside the
/// grammar is refused with its place, where a browser would draw the path as far as it can. Curves stay curves.
/// </remarks>
internal sealed class SvgPathReader
{
    private const int MostSegments = 10_000;
    private const double Greatest = 1e7;
    private const string Mend = "Save the drawing again as plain SVG.";

    private readonly string _text;
    private readonly List<List<EdgeCurve>> _paths = [];
    private List<EdgeCurve> _current = [];
    private int _at;
    private int _segments;
    private Point _start;
    private Point _pen;
    private Point _control;
    private char _last;

    private SvgPathReader(string text) => _text = text;

    /// <summary>The subpaths that hold at least one segment, closed ones ending where they start.</summary>
    public static IReadOnlyList<IReadOnlyList<EdgeCurve>> Read(string text)
    {
        var reader = new SvgPathReader(text);
        reader.Run();
        return reader._paths;
    }

    private void Run()
    {
        Spaces();
        while (_at < _text.Length)
        {
            var command = _text[_at];
            if (!"MmLlHhVvCcSsQqTtAaZz".Contains(command, StringComparison.Ordinal))
                throw Wrong($"'{command}' is no path command");
            if (_last == 0 && command is not ('M' or 'm'))
                throw Wrong("The path does not begin with a move (M)");
            _at++;
            if (command is 'Z' or 'z')
            {
                Close();
                Spaces();
                continue;
            }

            do
            {
                if (++_segments > MostSegments)
                    throw Wrong($"The path has more than {MostSegments} segments");
                Segment(char.ToUpperInvariant(command), char.IsLower(command));
                command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
            }
            while (MoreNumbers());
        }

        Finish();
    }

    private void Segment(char command, bool isRelative)
    {
        var from = isRelative ? _pen - Point.Origin : default;
        switch (command)
        {
            case 'M':
                Finish();
                _start = _pen = Place(from);
                break;
            case 'L':
                Line(Place(from));
                break;
            case 'H':
                Line(new(Number() + from.X, _pen.Y));
                break;
            case 'V':
                Line(new(_pen.X, Number() + from.Y));
                break;
            case 'C':
                Cubic(Place(from), Place(from), Place(from));
                break;
            case 'S':
                Cubic(_last is 'C' or 'S' ? _pen + (_pen - _control) : _pen, Place(from), Place(from));
                break;
            case 'Q':
                Quadratic(Place(from), Place(from));
                break;
            case 'T':
                Quadratic(_last is 'Q' or 'T' ? _pen + (_pen - _control) : _pen, Place(from));
                break;
            default:
                Arc(Number(), Number(), Number(), Flag(), Flag(), Place(from));
                break;
        }

        _last = command;
    }

    private void Line(Point to)
    {
        if (to != _pen)
            _current.Add(new StraightEdge(_pen, to));
        _pen = to;
    }

    private void Cubic(Point first, Point second, Point to)
    {
        if (first != _pen || second != _pen || to != _pen)
            _current.Add(new BezierEdge(_pen, first, second, to));
        (_pen, _control) = (to, second);
    }

    private void Quadratic(Point control, Point to)
    {
        if (control != _pen || to != _pen)
            _current.Add(BezierEdge.Quadratic(_pen, control, to));
        (_pen, _control) = (to, control);
    }

    /// <summary>An elliptical arc from its end points (SVG 1.1, appendix F.6.5 and F.6.6).</summary>
    private void Arc(double acrossSaid, double upSaid, double degrees, bool isLarge, bool isPositive, Point to)
    {
        double across = Math.Abs(acrossSaid), up = Math.Abs(upSaid);
        if (to == _pen || across == 0 || up == 0)
        {
            Line(to);
            return;
        }

        var turn = degrees % 360 * Math.PI / 180;
        var half = Affine.Turn(-turn).Map(0.5 * (_pen - to));
        double x = half.X / across, y = half.Y / up;
        var reach = (x * x) + (y * y);
        if (reach > 1)
            (across, up, x, y, reach) = (across * Math.Sqrt(reach), up * Math.Sqrt(reach), x / Math.Sqrt(reach), y / Math.Sqrt(reach), 1);
        // On the unit circle: from (x, y) to (-x, -y), the centre beside the middle of that chord.
        var away = Math.Sqrt(Math.Max(0, 1 - reach) / reach) * (isLarge == isPositive ? -1 : 1);
        var centre = new Vector(away * y, -away * x);
        Vector first = new Vector(x, y) - centre, last = new Vector(-x, -y) - centre;
        var start = Math.Atan2(first.Y, first.X);
        var sweep = Math.Atan2(last.Y, last.X) - start;
        if (isPositive && sweep <= 0)
            sweep += 2 * Math.PI;
        else if (!isPositive && sweep >= 0)
            sweep -= 2 * Math.PI;
        var place = Affine.Turn(turn).Then(Affine.Shift(_pen.Toward(to, 0.5) - Point.Origin));
        var middle = new Point(centre.X * across, centre.Y * up);
        var parts = Math.Abs(sweep) > Math.PI ? 2 : 1;
        for (var i = 0; i < parts; i++)
            _current.Add(EllipticArc.About(middle, across, up, start + (i * sweep / parts), sweep / parts).Mapped(place));
        _pen = to;
    }

    private void Close()
    {
        if (_pen != _start && _current.Count > 0)
            _current.Add(new StraightEdge(_pen, _start));
        _pen = _start;
        Finish();
        _last = 'Z';
    }

    private void Finish()
    {
        if (_current.Count > 0)
            _paths.Add(_current);
        _current = [];
    }

    private Point Place(Vector from)
    {
        var x = Number();
        return new Point(x, Number()) + from;
    }

    private bool Flag()
    {
        Separator();
        if (_at < _text.Length && _text[_at] is '0' or '1')
            return _text[_at++] == '1';
        throw Wrong("An arc's flag is 0 or 1");
    }

    private double Number()
    {
        Separator();
        var start = _at;
        if (_at < _text.Length && _text[_at] is '+' or '-')
            _at++;
        var digits = Digits();
        if (_at < _text.Length && _text[_at] == '.')
        {
            _at++;
            digits += Digits();
        }

        if (digits == 0)
            throw Wrong("A number is missing");
        if (_at < _text.Length && _text[_at] is 'e' or 'E')
        {
            _at++;
            if (_at < _text.Length && _text[_at] is '+' or '-')
                _at++;
            if (Digits() == 0)
                throw Wrong("A number's exponent is missing");
        }

        var number = double.Parse(_text.AsSpan(start, _at - start), NumberStyles.Float, CultureInfo.InvariantCulture);
        return Math.Abs(number) <= Greatest ? number : throw Wrong("A number is beyond all bounds");
    }

    private int Digits()
    {
        var start = _at;
        while (_at < _text.Length && char.IsAsciiDigit(_text[_at]))
            _at++;
        return _at - start;
    }

    private bool MoreNumbers()
    {
        Spaces();
        return _at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] is '+' or '-' or '.' or ',');
    }

    private void Separator()
    {
        Spaces();
        if (_at < _text.Length && _text[_at] == ',' && _at > 0 && !char.IsAsciiLetter(_text[_at - 1]))
            _at++;
        Spaces();
    }

    private void Spaces()
    {
        while (_at < _text.Length && _text[_at] is ' ' or '\t' or '\r' or '\n')
            _at++;
    }

    private OutlineRefusal Wrong(string what) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{what}, at character {_at + 1} of the path's data."), Mend);
}
