using CoatPlan.Bench.Exact;
using CoatPlan.Bench.Instances;
using CoatPlan.Bench.Screens;
using CoatPlan.Bench.Speed;

// One verb for each benchmark; what follows the verb is its own business.
return args switch
{
    ["exact", .. var rest] => ExactRun.Run(rest, Console.Out, Console.Error),
    ["growth", .. var rest] => GrowthRun.Run(rest, Console.Out, Console.Error),
    ["instances", .. var rest] => InstanceRun.Run(rest, Console.Out, Console.Error),
    ["screen", .. var rest] => ScreenRun.Run(rest, Console.Out, Console.Error),
    ["speed", .. var rest] => SpeedRun.Run(rest, Console.Out, Console.Error),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: exact [SEEDS]");
    Console.Error.WriteLine("       growth [ROUNDS]");
    Console.Error.WriteLine("       instances [--starts] FILE…");
    Console.Error.WriteLine("       speed [replan|examples|chance]");
    Console.Error.WriteLine("       screen [SURFACES]");
    return 2;
}
