using System.Globalization;
using BlockingTemplates.Fuzz;

// COUNT [lengths|reader|plans|all] [SEED]: so many cases of each target; without a target the unit parser and the reader.
var count = args.Length > 0 ? long.Parse(args[0], CultureInfo.InvariantCulture) : 1_000_000;
var wanted = args.Length > 1 ? args[1] : "";
var seed = args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 1;

// Before anything of the engine is loaded.
Instrumented.Engine();
List<Func<FuzzTarget>> targets = wanted switch
{
    "lengths" => [LengthTarget.Create],
    "reader" => [ReaderTarget.Create],
    "plans" => [PlanTarget.Create],
    "all" => [LengthTarget.Create, ReaderTarget.Create, PlanTarget.Create],
    "" => [LengthTarget.Create, ReaderTarget.Create],
    _ => throw new ArgumentException($"There is no target {wanted}."),
};
foreach (var target in targets)
{
    var coverage = new Coverage(); // the counters have to be there before the target touches the engine
    if (!new FuzzRun(target(), coverage, seed).Go(count))
        return 1;
}

return 0;
