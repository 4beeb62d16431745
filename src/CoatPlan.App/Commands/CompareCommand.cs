using System.CommandLine;
using CoatPlan.App.Wording;

namespace CoatPlan.App.Commands;

/// <summary><c>coatplan compare JOB JOB</c>: two jobs side by side.</summary>
internal static class CompareCommand
{
    private const string Unknown = "not known";

    /// <summary>The command.</summary>
    /// <param name="surroundings">What it may reach.</param>
    public static Command Of(Surroundings surroundings)
    {
        var command = new Command("compare", "Set the plans of two job files side by side: finish, cans, price, exposure, warnings.");
        var first = Shared.JobArgument("JOB");
        var second = Shared.JobArgument("OTHER");
        var json = Shared.JsonOption("Print both and the change as JSON, for scripts");
        command.Add(first);
        command.Add(second);
        command.Add(json);
        var sources = SourceOptions.AddedTo(command);
        command.SetAction(parsed =>
        {
            var (one, other) = (parsed.GetRequiredValue(first), parsed.GetRequiredValue(second));
            return one == "-" && other == "-"
                ? throw new BadInputException("coatplan: standard input can be one of the two jobs, not both")
                : Run(surroundings, Opened(surroundings, [one, other], sources.Of(parsed)), parsed.GetValue(json));
        });
        return command;
    }

    // What is wrong with either is said in one go.
    private static ImmutableArray<OpenedJob> Opened(Surroundings surroundings, ImmutableArray<string> paths, Sources sources)
    {
        var opened = ImmutableArray.CreateBuilder<OpenedJob>();
        var wrong = ImmutableArray.CreateBuilder<string>();
        foreach (var path in paths)
        {
            try
            {
                opened.Add(JobSource.Open(surroundings, path, sources));
            }
            catch (BadInputException exception)
            {
                wrong.AddRange(exception.Lines);
            }
        }

        return wrong.Count == 0 ? opened.ToImmutable() : throw new BadInputException([.. wrong.Distinct(StringComparer.Ordinal)]);
    }

    private static int Run(Surroundings surroundings, ImmutableArray<OpenedJob> opened, bool json)
    {
        var plans = new Plan[opened.Length];
        Parallel.For(0, plans.Length, i => plans[i] = Planner.Plan(opened[i].Ready));
        var comparison = PlanComparison.Of(opened[0].Name, plans[0], opened[1].Name, plans[1]);
        if (json)
        {
            surroundings.Out.Write(PlanComparisonJson.Write(comparison));
        }
        else
        {
            foreach (var line in Page.Of(TextStyle.Of(surroundings, opened[0].Job), page => Write(page, comparison)))
                surroundings.Out.WriteLine(line);
        }

        surroundings.Out.Flush();
        foreach (var plan in new[] { comparison.First, comparison.Second })
        {
            foreach (var reason in plan.Reasons)
                surroundings.Complain($"{plan.Name}: {reason.ReplaceLineEndings(" ")}");
        }

        return comparison.First.Meets && comparison.Second.Meets ? ExitCode.Done : ExitCode.NoSuchPlan;
    }

    private static void Write(Page page, PlanComparison comparison)
    {
        var (first, second) = (comparison.First, comparison.Second);
        page.Title(first.Job == second.Job ? first.Job : $"{first.Job} and {second.Job}");
        page.Columns("", first.Name, second.Name);
        Row("Finish", plan => Moment(plan.IsWhole ? plan.Finish : null));
        Row("In service", plan => Moment(plan.InService));
        Row("Asked", plan => plan.Meets ? "met" : "not met");
        Row("Hands-on", plan => $"{Written.Minutes(Math.Round(plan.HandsH * 60))} on {Written.Count(plan.Days, "day", "days")}");
        Row("Cans", plan => $"{plan.Cans}, {plan.Buy} to buy");
        Row("Price", plan => plan.Price is { } price ? Written.Money(price, plan.Currency ?? page.Style.Currency) : Unknown);
        if (first.Quote is not null || second.Quote is not null)
            Row("Quote", plan => plan.Quote is { } quote ? Written.Money(quote, plan.Currency!) : "none");
        Row("Peak mixture", plan => Times(plan.PeakMixtureRatio));
        Row("8 h average", plan => Times(plan.TwaMixtureRatio));
        Row("Peak of LEL", plan => plan.PeakLelRatio is { } share ? Written.Percent(share) : "none");
        Row("Respirator", plan => plan.Respirator);
        Row("Warnings", plan => plan.Warnings.IsEmpty ? "none" : string.Join(", ", plan.Warnings));

        page.Heading("The second against the first");
        page.Bullet("-", comparison.FinishMovesMin switch
        {
            null => "One of them could not be placed in full.",
            0 => "Finishes at the same minute.",
            > 0 and var later => $"Finishes {Written.Minutes(later)} later.",
            var earlier => $"Finishes {Written.Minutes(-earlier.Value)} earlier.",
        });
        page.Bullet("-", comparison.MoreCans switch
        {
            0 => "Needs as many cans.",
            > 0 and var more => $"Needs {Written.Count(more, "can", "cans")} more.",
            var fewer => $"Needs {Written.Count(-fewer, "can", "cans")} fewer.",
        });
        if (!comparison.NewWarnings.IsEmpty)
            page.Bullet("!", $"Warns of {string.Join(", ", comparison.NewWarnings)} besides.");
        if (!comparison.GoneWarnings.IsEmpty)
            page.Bullet("-", $"No longer warns of {string.Join(", ", comparison.GoneWarnings)}.");

        void Row(string label, Func<ComparedPlan, string> say) => page.Columns(label, say(first), say(second));
    }

    private static string Moment(LocalDateTime? at) => at is { } known ? Clock.Moment(known) : "could not be placed in full";

    private static string Times(double? ratio) => ratio is { } known ? $"{Written.Number(known, 2)} times the limit" : "none";
}
