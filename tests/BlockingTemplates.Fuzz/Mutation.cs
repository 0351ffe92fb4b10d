namespace BlockingTemplates.Fuzz;

/// <summary>Makes new cases of old ones.</summary>
internal sealed class Mutation(Random random, IReadOnlyList<byte[]> words, int mostBytes)
{
    private const int LongestStretch = 40;

    /// <summary>A case with one to eight changes.</summary>
    /// <param name="from">The case it is made of.</param>
    /// <param name="other">A second one, to take stretches of.</param>
    public byte[] Of(byte[] from, byte[] other)
    {
        List<byte> bytes = [.. from];
        for (var times = 1 << random.Next(4); times > 0; times--)
            Change(bytes, other);
        if (bytes.Count > mostBytes)
            bytes.RemoveRange(mostBytes, bytes.Count - mostBytes);
        return [.. bytes];
    }

    private void Change(List<byte> bytes, byte[] other)
    {
        var at = random.Next(bytes.Count + 1);
        var length = Math.Min(1 + random.Next(LongestStretch), bytes.Count - at);
        switch (random.Next(9))
        {
            case 0 when at < bytes.Count:
                bytes[at] = (byte)random.Next(256);
                break;
            case 1 when at < bytes.Count:
                bytes[at] ^= (byte)(1 << random.Next(8));
                break;
            case 2:
                bytes.RemoveRange(at, length);
                break;
            case 3:
                bytes.InsertRange(at, bytes.GetRange(at, length));
                break;
            case 4 when at < bytes.Count:
                bytes[at] = (byte)('0' + random.Next(10));
                break;
            case 5:
                bytes.RemoveRange(at, length);
                bytes.InsertRange(at, words[random.Next(words.Count)]);
                break;
            case 6 when other.Length > 0:
                var start = random.Next(other.Length);
                bytes.InsertRange(at, other.AsSpan(start, Math.Min(1 + random.Next(LongestStretch), other.Length - start)).ToArray());
                break;
            case 7 when other.Length > 0 && at < other.Length:
                bytes.RemoveRange(at, bytes.Count - at);
                bytes.AddRange(other.AsSpan(at).ToArray());
                break;
            default:
                bytes.InsertRange(at, words[random.Next(words.Count)]);
                break;
        }
    }
}
