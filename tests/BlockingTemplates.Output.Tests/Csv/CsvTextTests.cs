using System.Text;
using BlockingTemplates.Output.Csv;
using CsCheck;

namespace BlockingTemplates.Output.Tests.Csv;

public class CsvTextTests
{
    [Fact]
    public void A_table_is_written_with_commas_crlf_and_a_mark_for_spreadsheets()
    {
        var bytes = CsvText.Write([[CsvCell.Text("number"), CsvCell.Text("pull, cm")], [CsvCell.Number(1), CsvCell.Number(-2.345, 1)], []]);
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes.Take(3));
        Assert.Equal("number,\"pull, cm\"\r\n1,-2.3\r\n\r\n", Encoding.UTF8.GetString(bytes[3..]));
    }

    [Theory]
    [InlineData("plain é ½", "plain é ½")]
    [InlineData("", "")]
    [InlineData("say \"hi\"", "\"say \"\"hi\"\"\"")]
    [InlineData("two\r\nlines", "\"two\r\nlines\"")]
    [InlineData(" edge ", "\" edge \"")]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+49", "'+49")]
    [InlineData("-1", "'-1")]
    [InlineData("@cmd", "'@cmd")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\rx", "\"'\rx\"")]
    [InlineData("  =1", "'  =1")]
    [InlineData("=cmd|' /C calc'!A0,x", "\"'=cmd|' /C calc'!A0,x\"")]
    [InlineData("\uFF1D1", "'\uFF1D1")]
    [InlineData("a=b", "a=b")]
    [InlineData("nul\0bell\u0007", "nulbell")]
    [InlineData("\0=1", "'=1")]
    public void Texts_stay_texts(string text, string written) =>
        Assert.Equal(written + "\r\n", Encoding.UTF8.GetString(CsvText.Write([[CsvCell.Text(text)]])[3..]));

    [Fact]
    public void Numbers_are_fixed_and_never_touched()
    {
        Assert.Equal(
            "-5,-0.250,0.0,0,12345678.90\r\n",
            Encoding.UTF8.GetString(CsvText.Write([[CsvCell.Number(-5), CsvCell.Number(-0.25, 3), CsvCell.Number(-0.01, 1), CsvCell.Number(-0.0, 0), CsvCell.Number(12345678.9, 2)]])[3..]));
        Assert.Throws<ArgumentOutOfRangeException>(() => CsvCell.Number(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => CsvCell.Number(1, 10));
        Assert.Equal("", default(CsvCell).Shown);
    }

    [Fact]
    public void Any_table_reads_back_cell_by_cell() =>
        Gen.String[Gen.OneOf(Gen.Char['a', 'e'], Gen.Const(','), Gen.Const('"'), Gen.Const('\n'), Gen.Const('\r'), Gen.Const(' '), Gen.Const('é')), 0, 8].Array[1, 4].Array[1, 5].Sample(
            rows =>
            {
                var text = Encoding.UTF8.GetString(CsvText.Write([.. rows.Select(r => r.Select(CsvCell.Text).ToArray())])[3..]);
                var read = Read(text);
                Assert.Equal(rows.Length, read.Count);
                for (var i = 0; i < rows.Length; i++)
                {
                    // A line break before anything else is taken for a formula and gets an apostrophe.
                    Assert.Equal(rows[i].Select(c => c.TrimStart(' ').StartsWith('\n') || c.TrimStart(' ').StartsWith('\r') ? "'" + c : c), read[i]);
                }
            },
            iter: 500,
            seed: "0000KWc4nUb2");

    /// <summary>A slow and obvious reader of RFC 4180.</summary>
    private static List<List<string>> Read(string text)
    {
        var (rows, row, cell, quoted) = (new List<List<string>>(), new List<string>(), new StringBuilder(), false);
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (quoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append(c);
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (!quoted && c is ',' or '\n')
            {
                if (c == '\n') Assert.Equal('\r', text[i - 1]);
                row.Add(cell.ToString());
                cell.Clear();
                if (c != '\n') continue;
                rows.Add(row);
                row = [];
            }
            else if (quoted || c != '\r')
            {
                cell.Append(c);
            }
        }

        Assert.Empty(row);
        return rows;
    }
}
