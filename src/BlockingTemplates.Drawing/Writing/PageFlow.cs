using System.Globalization;
using BlockingTemplates.Drawing.Pages;
using BlockingTemplates.Drawing.Text;
using BlockingTemplates.Engine.Shapes;

namespace BlockingTemplates.Drawing.Writing;

/// <summary>Fills pages from the top with text, pictures and tables, and goes to a new page where one is full.</summary>
public sealed class PageFlow
{
    private const double BulletMm = 4;
    private readonly string _name;
    private readonly string _bookmark;
    private readonly List<Page> _pages = [];
    private List<Element> _content = [];
    private double _y;
    private bool _isFresh = true;

    /// <summary>A flow of pages.</summary>
    /// <param name="widthMm">Width of the paper.</param>
    /// <param name="heightMm">Height of the paper.</param>
    /// <param name="name">Label of the first page; later ones add a number.</param>
    /// <param name="bookmark">Bookmark of the first page.</param>
    /// <param name="marginMm">White on all sides.</param>
    public PageFlow(double widthMm, double heightMm, string name, string bookmark, double marginMm = 15)
    {
        (_name, _bookmark) = (name, bookmark);
        Paper = new(0, 0, widthMm, heightMm);
        Column = Paper.Grown(-marginMm);
        _y = Column.Upper;
    }

    /// <summary>The paper.</summary>
    public Box Paper { get; }

    /// <summary>The part of the paper that is written on.</summary>
    public Box Column { get; }

    /// <summary>Height left on this page, in millimetres.</summary>
    public double Left => _y - Column.Lower;

    /// <summary>Writes a paragraph, broken into lines.</summary>
    public void Paragraph(string text, TextStyle style, double indentMm = 0)
    {
        ArgumentNullException.ThrowIfNull(style);
        foreach (var line in TextMeasure.Wrap(text, Column.Width - indentMm, style.SizeMm, style.Weight))
        {
            Need(style.LineMm);
            Line(line, style, indentMm);
        }
    }

    /// <summary>Writes a heading that is not left alone at the foot of a page.</summary>
    public void Heading(string text, TextStyle? style = null)
    {
        var its = style ?? TextStyle.Heading;
        Need((2 * its.LineMm) + TextStyle.Body.LineMm);
        if (!_isFresh)
            Gap(2.5);
        Paragraph(text, its);
        Gap(0.8);
    }

    /// <summary>Writes a point of a list.</summary>
    public void Point(string text, TextStyle? style = null) => Item(text, style ?? TextStyle.Body, Dot);

    /// <summary>Writes a numbered step of a list.</summary>
    public void Step(int number, string text) => Item(text, TextStyle.Body, style => _content.Add(new TextElement(
        number.ToString(CultureInfo.InvariantCulture), new(Column.Left, _y - (0.72 * style.LineMm)), style.SizeMm, FontWeight.Bold)));

    private void Item(string text, TextStyle style, Action<TextStyle> mark)
    {
        var lines = TextMeasure.Wrap(text, Column.Width - BulletMm, style.SizeMm, style.Weight);
        Need(Math.Min(lines.Count, 3) * style.LineMm);
        mark(style);
        foreach (var line in lines)
        {
            Need(style.LineMm);
            Line(line, style, BulletMm);
        }

        Gap(0.8);
    }

    /// <summary>Takes a box of the column's width and a height, on a new page where it does not fit.</summary>
    public Box Take(double heightMm)
    {
        Need(heightMm);
        _isFresh = false;
        var box = new Box(Column.Left, _y - heightMm, Column.Right, _y);
        _y -= heightMm;
        return box;
    }

    /// <summary>Draws on the current page.</summary>
    public void Draw(params IEnumerable<Element> elements) => _content.AddRange(elements);

    /// <summary>Leaves a gap.</summary>
    public void Gap(double heightMm) => _y -= heightMm;

    /// <summary>Starts a new page unless this one is still empty.</summary>
    public void NewPage()
    {
        if (_isFresh)
            return;
        Close();
    }

    /// <summary>The finished pages.</summary>
    public IReadOnlyList<Page> Finish()
    {
        NewPage();
        return _pages;
    }

    /// <summary>Starts a new page where a height is not left on this one.</summary>
    public void Keep(double heightMm) => Need(heightMm);

    private void Need(double heightMm)
    {
        if (_y - heightMm < Column.Lower - 1e-9)
            NewPage();
    }

    private void Line(string line, TextStyle style, double indentMm)
    {
        _y -= style.LineMm;
        _isFresh = false;
        _content.Add(new TextElement(line, new(Column.Left + indentMm, _y + (0.28 * style.LineMm)), style.SizeMm, style.Weight));
    }

    private void Dot(TextStyle style) =>
        _content.Add(new PathElement(PathSteps.Circle(new(Column.Left + 1.3, _y - (0.48 * style.LineMm)), 0.6), null, new Fill()));

    private void Close()
    {
        var isFirst = _pages.Count == 0;
        var label = isFirst ? _name : FormattableString.Invariant($"{_name} {_pages.Count + 1}");
        _pages.Add(new(Paper.Width, Paper.Height, _content, label, isFirst ? _bookmark : null));
        _content = [];
        _y = Column.Upper;
        _isFresh = true;
    }
}
