namespace BlockingTemplates.Engine.Projects.Text;

/// <summary>Lines and columns of a UTF-8 text.</summary>
internal static class TextPosition
{
    /// <summary>Line and column, both from 1, of a byte; columns count characters.</summary>
    public static (int Line, int Column) At(ReadOnlySpan<byte> utf8, int offset)
    {
        var before = utf8[..offset];
        var column = 1;
        foreach (var b in before[(before.LastIndexOf((byte)'\n') + 1)..])
        {
            // Bytes 10xxxxxx continue a character.
            if ((b & 0xC0) != 0x80)
                column++;
        }

        return (before.Count((byte)'\n') + 1, column);
    }

    /// <summary>The byte of a line and of a byte in that line, both from 0, at most the text's length.</summary>
    public static int Offset(ReadOnlySpan<byte> utf8, long line, long byteInLine)
    {
        var start = 0;
        for (var i = 0L; i < line; i++)
        {
            var next = utf8[start..].IndexOf((byte)'\n');
            if (next < 0)
                break;
            start += next + 1;
        }

        return (int)Math.Min(start + byteInLine, utf8.Length);
    }
}
