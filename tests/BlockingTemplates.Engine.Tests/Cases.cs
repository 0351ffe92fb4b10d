using CsCheck;

namespace BlockingTemplates.Engine.Tests;

/// <summary>Runs a test on random cases that are the same in every run.</summary>
internal static class Cases
{
    /// <summary>Calls the assertion on so many cases; a failing case is told with its number.</summary>
    public static void Check<T>(this Gen<T> gen, int count, Action<T> assert)
    {
        for (var i = 0; i < count; i++)
        {
            var value = gen.Generate(new PCG((uint)i, 1959), null, out _);
            try
            {
                assert(value);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"Case {i}: {e.Message} {value}", e);
            }
        }
    }
}
