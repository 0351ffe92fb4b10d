using System.Runtime.InteropServices;
using SharpFuzz.Common;

namespace BlockingTemplates.Fuzz;

/// <summary>What the counters at the engine's branches saw: of each case, and of all before it.</summary>
/// <remarks>One counter a pair of branches, counted in the classes 1, 2, 3, 4, 8, 16, 32, 128, as AFL does.</remarks>
internal sealed unsafe class Coverage
{
    private const int Counters = 1 << 16;
    private readonly byte* _counts = (byte*)NativeMemory.AllocZeroed(Counters);
    private readonly byte[] _seen = new byte[Counters];

    public Coverage() => Trace.SharedMem = _counts;

    /// <summary>Branch pairs met so far.</summary>
    public int Pairs { get; private set; }

    /// <summary>Clears the counters for a case.</summary>
    public void Clear()
    {
        new Span<byte>(_counts, Counters).Clear();
        Trace.PrevLocation = 0;
    }

    /// <summary>Whether the case met a pair of branches, or a class of counts of it, that none before did; remembers it.</summary>
    public bool IsNew()
    {
        var isNew = false;
        var words = new ReadOnlySpan<ulong>(_counts, Counters / sizeof(ulong));
        for (var w = 0; w < words.Length; w++)
        {
            if (words[w] == 0)
                continue;
            for (var i = w * sizeof(ulong); i < (w + 1) * sizeof(ulong); i++)
            {
                if (_counts[i] == 0)
                    continue;
                var kind = Class(_counts[i]);
                if ((_seen[i] & kind) != 0)
                    continue;
                Pairs += _seen[i] == 0 ? 1 : 0;
                _seen[i] |= kind;
                isNew = true;
            }
        }

        return isNew;
    }

    private static byte Class(byte count) => count switch
    {
        <= 2 => count,
        3 => 4,
        < 8 => 8,
        < 16 => 16,
        < 32 => 32,
        < 128 => 64,
        _ => 128,
    };
}
