using SharpFuzz;

namespace BlockingTemplates.Fuzz;

/// <summary>Puts counters at the branches of the engine's assembly beside this program; the build's own copy stays as it is.</summary>
internal static class Instrumented
{
    /// <summary>To be called before any of the engine's types is used.</summary>
    public static void Engine()
    {
        var file = Path.Combine(AppContext.BaseDirectory, "BlockingTemplates.Engine.dll");
        try
        {
            Fuzzer.Instrument(file, _ => true, Options.Value);
        }
        catch (InstrumentationException e) when (e.Message.Contains("already", StringComparison.OrdinalIgnoreCase))
        {
            // By an earlier run; the build copies a fresh one whenever it is built anew.
        }
    }
}
