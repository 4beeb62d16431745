using CoatPlan.Plans;

namespace CoatPlan.Sheets.Content;

/// <summary>The work sheet: what to do and when, with boxes to tick and room for what was really done and read.</summary>
public static class WorkSheet
{
    // Told where the work on the vehicle is told; everything else hangs on the wall.
    private static readonly ImmutableHashSet<string> VehicleCautions =
        ImmutableHashSet.Create(StringComparer.Ordinal, "battery", "hot-cap", "coolant", "wheel", "sparks", "chlorinated", "first-warm-up", "check-brakes");

    /// <summary>What the sheet says.</summary>
    /// <param name="plan">The plan.</param>
    public static Sheet Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var words = new PlanWords(plan);
        return new Sheet("work", "Work", plan.Job, [.. Head(plan), .. Steps(plan, words), .. Deferral.Of(plan)]);
    }

    /// <summary>Whether a caution belongs to the work on the vehicle and not to the wall.</summary>
    internal static bool IsForVehicle(PlanCaution caution) => VehicleCautions.Contains(caution.Code);

    private static IEnumerable<Block> Head(Plan plan)
    {
        if (!plan.Reasons.IsEmpty)
        {
            yield return new Notice("This plan does not meet what was asked.");
            yield return new Bullets(plan.Reasons);
        }

        yield return new Paragraph(PlanWords.Ends(plan));
        if (!plan.Warnings.IsEmpty)
        {
            yield return new Heading("Before you start");
            yield return new Bullets([.. plan.Warnings.Select(warning => WhyLine.Of(warning.Text))]);
        }

        var vehicle = plan.Cautions.Where(IsForVehicle).Select(CautionLine.Of).ToImmutableArray();
        if (!vehicle.IsEmpty)
        {
            yield return new Heading(plan.Steps.Any(step => step.Station is not null) ? "At the bench" : "At the vehicle");
            yield return new Bullets([.. vehicle, CautionLine.Legend]);
        }
    }

    private static IEnumerable<Block> Steps(Plan plan, PlanWords words) =>
        plan.Steps.Any(step => step.Station is not null) ? StationWork.Of(plan, words) : ByDay(plan, words);

    private static IEnumerable<Block> ByDay(Plan plan, PlanWords words)
    {
        foreach (var day in plan.Steps.GroupBy(step => step.Start.Date))
        {
            yield return new Heading(PlanWords.Day(day.Key));
            foreach (var step in day)
                yield return StepOf(step, plan, words);
        }
    }

    /// <summary>What the sheet says of one step.</summary>
    internal static WorkStep StepOf(PlanStep step, Plan plan, PlanWords words) => new(
        PlanWords.Span(step.Start, step.End),
        step.Title,
        step.Coat is null ? "" : words.Names(step.Surfaces),
        [.. Details(step, plan, words), .. Limits(step, plan)],
        [.. Readings(step, words)]);

    /// <summary>How long, why, how, and what it waits for.</summary>
    internal static IEnumerable<string> Details(PlanStep step, Plan plan, PlanWords words)
    {
        yield return $"Hands-on {PlanWords.Minutes(step.HandsMin)}. {WhyLine.Of(step.Why)}";
        foreach (var note in step.Notes)
            yield return WhyLine.Of(note);
        if (step.Passes is { } passes)
            yield return $"Passes {words.ByHand(passes.FanM)} wide, {words.ByHand(passes.SpacingM)} apart, nozzle {words.ByHand(passes.DistanceM)} off.";
        foreach (var wait in step.After.Where(wait => wait.LeastMin > 0))
        {
            var title = plan.Steps.FirstOrDefault(other => other.Id == wait.Step)?.Title ?? wait.Step;
            var label = wait.LabelMin is { } minutes ? $", label {PlanWords.Minutes(minutes)}" : "";
            var most = wait.MostMin is { } limit ? $", and no later than {PlanWords.Minutes(limit)} after its start" : "";
            yield return $"Not before {PlanWords.Minutes(wait.LeastMin!.Value)} after “{title}” ({Word(wait.Stage)}{label}){most}.";
        }
    }

    private static IEnumerable<string> Limits(PlanStep step, Plan plan)
    {
        if (step.LastSafeStart is { } last)
            yield return $"Last start inside its windows: {PlanWords.Moment(last)}.";
        if (plan.RestPoints.Any(point => point.After == step.Id))
            yield return "After this the whole job can rest a week.";
    }

    /// <summary>What is read before a coat, with its limits.</summary>
    internal static IEnumerable<string> Readings(PlanStep step, PlanWords words)
    {
        if (step.Limits is not { } limits)
            yield break;

        yield return $"air ({words.Temperature(limits.AirLowC)} to {words.Temperature(limits.AirHighC)})";
        yield return $"metal ({words.Temperature(limits.SurfaceLowC)} to {words.Temperature(limits.SurfaceHighC)})";
        yield return limits.HumidityLow > 0
            ? $"humidity ({PlanWords.Percent(limits.HumidityLow)} to {PlanWords.Percent(limits.HumidityHigh)})"
            : $"humidity (to {PlanWords.Percent(limits.HumidityHigh)})";
        yield return $"metal above dew point (at least {words.Difference(limits.AboveDewC)})";
    }

    private static string Word(PlanStage stage) => stage switch
    {
        PlanStage.Done => "dried off",
        PlanStage.Dust => "dust-free",
        PlanStage.Touch => "dry to touch",
        PlanStage.Tape => "dry enough to tape",
        PlanStage.Recoat => "recoat window",
        PlanStage.Handle => "dry to handle",
        PlanStage.Through => "dry through",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "A stage of the contract."),
    };
}
