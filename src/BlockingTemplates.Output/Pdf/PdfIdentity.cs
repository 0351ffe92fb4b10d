using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace BlockingTemplates.Output.Pdf;

/// <summary>Gives a saved file metadata and identifiers that come from its content alone.</summary>
/// <remarks>
/// PDFsharp writes random identifiers into its metadata and trailer, and the title into the metadata without escaping it.
/// The metadata is the last object of the file, so it can be written anew: only the place of the cross-reference table
/// moves. Throws <see cref="InvalidOperationException"/> when a file is not laid out so.
/// </remarks>
internal static partial class PdfIdentity
{
    public static byte[] Settle(byte[] pdf, string title)
    {
        // Latin-1 maps every byte to one character and back.
        var text = Encoding.Latin1;
        var tableAt = pdf.AsSpan().LastIndexOf("\nxref\n"u8) + 1;
        if (tableAt == 0) throw Unknown("no cross-reference table");
        var table = text.GetString(pdf, tableAt, pdf.Length - tableAt);
        var size = SizePattern().Match(table);
        if (!size.Success) throw Unknown("no size in the trailer");
        var last = int.Parse(size.Groups[1].ValueSpan, CultureInfo.InvariantCulture) - 1;
        var head = text.GetBytes(string.Create(CultureInfo.InvariantCulture, $"\n{last} 0 obj\n"));
        var metadataAt = pdf.AsSpan(0, tableAt).LastIndexOf(head) + 1;
        if (metadataAt == 0 || pdf.AsSpan(metadataAt, tableAt - metadataAt).IndexOf("/Subtype/XML"u8) < 0) throw Unknown("the metadata is not the last object");
        if (IdPattern().Count(table) != 1 || StartPattern().Count(table) != 1) throw Unknown("the trailer has another form");

        var identity = SHA256.HashData(pdf.AsSpan(0, metadataAt)).AsSpan(0, 16).ToArray();
        var id = Convert.ToHexString(identity);
        var packet = XmpPacket.Write(title, new Guid(identity));
        var opening = string.Create(CultureInfo.InvariantCulture, $"{last} 0 obj\n<</Type/Metadata/Subtype/XML/Length {packet.Length}>>\nstream\n");

        using var whole = new MemoryStream(pdf.Length + 1024);
        whole.Write(pdf.AsSpan(0, metadataAt));
        whole.Write(text.GetBytes(opening));
        whole.Write(packet);
        whole.Write("\nendstream\nendobj\n"u8);
        var newTableAt = whole.Length.ToString(CultureInfo.InvariantCulture);
        table = IdPattern().Replace(table, $"/ID[<{id}><{id}>]");
        table = StartPattern().Replace(table, $"startxref\n{newTableAt}\n");
        whole.Write(text.GetBytes(table));
        return whole.ToArray();
    }

    private static InvalidOperationException Unknown(string what) => new($"The PDF library wrote a file of an unknown form: {what}.");

    [GeneratedRegex(@"/Size\s+(\d+)")]
    private static partial Regex SizePattern();

    [GeneratedRegex(@"/ID\s*\[\s*<[0-9A-Fa-f\s]*>\s*<[0-9A-Fa-f\s]*>\s*\]")]
    private static partial Regex IdPattern();

    [GeneratedRegex(@"startxref\s+\d+\s+")]
    private static partial Regex StartPattern();
}
