using System.Globalization;
using System.Text;
using QRCoder;

namespace BlockingTemplates.Web.Sharing;

/// <summary>An address as a QR code (ISO/IEC 18004), with its quiet zone of four modules.</summary>
internal static class QrPicture
{
    /// <summary>Modules along a side, and the dark ones as the data of an SVG path, one unit a module.</summary>
    public static (int Size, string Path) Of(string text)
    {
        var rows = Modules(text);
        var path = new StringBuilder();
        for (var y = 0; y < rows.Count; y++)
        {
            for (var x = 0; x < rows.Count; x++)
            {
                if (rows[y][x])
                    path.Append(CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
            }
        }

        return (rows.Count, path.ToString());
    }

    /// <summary>The code in characters for a terminal, two modules a character, dark on light whatever the terminal's colours.</summary>
    public static string ForTerminal(string text)
    {
        var rows = Modules(text);
        var lines = new StringBuilder();
        for (var y = 0; y < rows.Count; y += 2)
        {
            lines.Append("\u001b[30;107m");
            for (var x = 0; x < rows.Count; x++)
                lines.Append((rows[y][x], y + 1 < rows.Count && rows[y + 1][x]) switch { (true, true) => '█', (true, false) => '▀', (false, true) => '▄', _ => ' ' });
            lines.Append("\u001b[0m\n");
        }

        return lines.ToString();
    }

    private static List<System.Collections.BitArray> Modules(string text)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        return code.ModuleMatrix;
    }
}
