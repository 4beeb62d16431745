using CoatPlan.Plans;
using CoatPlan.Presets;

namespace CoatPlan.Explanations;

/// <summary>What can be asked of the air and of what is worn in it.</summary>
internal static class AirTopics
{
    private const string Balance = "C′ = (G − Q/K·C)/V, a well-mixed room solved within each minute with everything that is wet then";

    /// <summary>Less than this adds nothing to a sum that anybody would see.</summary>
    private const double LeastPpm = 0.05;

    private const string BalanceSource = "textbook mass balance (common practice); it understates the breathing zone of the person spraying";

    public static IEnumerable<Topic> Of(Workings workings, Told told)
    {
        var air = workings.Air;
        yield return new Topic("air", ["air"], () => Overview(workings, told));
        if (air.RoomM3 is { } room)
        {
            yield return new Topic("air.roomM3", ["room"], () => Told.Sum("volume of air", told.Format.Room(UnitsNet.Volume.FromCubicMeters(room)), room, "length × width × height, or the volume as given", Told.JobFile));
        }

        yield return new Topic("air.exhaustM3PerMin", ["exhaust"], () => Exhaust(workings, told));
        yield return new Topic("air.mixing", ["mixing"], () => Mixing(workings));
        yield return new Topic("air.twaMixtureRatio", ["air average", "average", "twa"], () => Told.Sum(
            "worst 8-hour average of the mixture, over its limit", Told.Plain(air.TwaMixtureRatio, 2), air.TwaMixtureRatio, "highest mean of Σ C/limit over any 8 h", "29 CFR 1910.1000(d)(1)(i), (d)(2)(i) (published, read second-hand)", [.. Limits(workings)]));
        if (air.ExhaustForLimitM3PerMin is { } forLimit)
            yield return new Topic("air.exhaustForLimitM3PerMin", ["exhaust for limit", "air exhaust"], () => Needed(workings, told, "least exhaust at which Σ C/limit stays under 1 in every minute", forLimit));
        if (air.ExhaustForLelM3PerMin is { } forLel)
            yield return new Topic("air.exhaustForLelM3PerMin", ["exhaust for lel"], () => Needed(workings, told, "least exhaust at which vapour stays under a tenth of the lower explosive limit", forLel, told.Figure("lel-share-work")));
        if (air.DilutionForLimitM3PerMin is { } dilution)
        {
            yield return new Topic("air.dilutionForLimitM3PerMin", ["dilution"], () => Told.Sum(
                "the textbook's dilution figure", told.Flow(dilution), dilution, "Q = K · Σ G/limit of the heaviest coat, all of it given off while it is sprayed", "textbook dilution (common practice)", Mixing(workings)));
        }

        if (air.DilutionForLelM3PerMin is { } forLelDilution)
        {
            yield return new Topic("air.dilutionForLelM3PerMin", ["dilution for lel"], () => Told.Sum(
                "the textbook's dilution figure for the explosive limit", told.Flow(forLelDilution), forLelDilution, "Σ liquid × (1 − LEL) × vapour per liquid ÷ LEL ÷ share of the LEL, over the minutes of spraying, of the heaviest coat", "29 CFR 1910.94(c)(6)(ii) (from memory)", told.Figure("lel-share-work")));
        }

        foreach (var topic in Worst(workings, told).Concat(Steps(workings, told)).Concat(Solvents(workings, told)).Concat(Mends(workings, told)).Concat(Respirator(workings, told)))
            yield return topic;
    }

    private static IEnumerable<Topic> Worst(Workings workings, Told told)
    {
        if (workings.Air.ByStep.MaxBy(step => step.MixtureRatio) is { } worst)
            yield return new Topic("air.byStep", ["air mixture", "mixture"], () => Mixture(workings, told, worst));
        if (workings.Air.ByStep.MaxBy(step => step.LelRatio) is { } densest)
            yield return new Topic("air.byStep", ["air lel", "lel"], () => Lel(workings, told, densest));
        if (workings.Air.ByStep.MaxBy(step => step.PurgeMin ?? double.MaxValue) is { } longest)
            yield return new Topic("air.byStep", ["air purge", "purge"], () => Purge(workings, told, longest));
    }

    private static Explanation Overview(Workings workings, Told told)
    {
        var air = workings.Air;
        var worst = air.ByStep.MaxBy(step => step.MixtureRatio);
        return Told.Sum(
            "the air of the work place", worst is null ? "nothing gathers" : $"{Told.Plain(worst.MixtureRatio, 2)} times the limit of the mixture at worst", worst?.MixtureRatio, Balance, BalanceSource,
            worst is null ? null : Mixture(workings, told, worst),
            air.ByStep.MaxBy(step => step.LelRatio) is { } densest ? Lel(workings, told, densest) with { Inputs = [] } : null,
            Told.Given("worst 8-hour average, over the limit", Told.Plain(air.TwaMixtureRatio, 2), "29 CFR 1910.1000(d)", air.TwaMixtureRatio),
            Exhaust(workings, told), Mixing(workings));
    }

    private static IEnumerable<Topic> Steps(Workings workings, Told told)
    {
        for (var i = 0; i < workings.Air.ByStep.Length; i++)
        {
            var step = workings.Air.ByStep[i];
            var number = NumberOf(workings, step.Step);
            Topic Say(string field, Func<Explanation> explain, int at) => new(
                $"air.byStep[{at}].{field}", [$"step {number} {field}", $"step {step.Step} {field}", $"air.byStep[{step.Step}].{field}"], explain);

            yield return Say("mixtureRatio", () => Mixture(workings, told, step), i);
            yield return Say("lelRatio", () => Lel(workings, told, step), i);
            if (step.PurgeMin is not null)
                yield return Say("purgeMin", () => Purge(workings, told, step), i);
            foreach (var (solvent, ppm) in step.PeakPpm)
                yield return Say($"peakPpm.{solvent}", () => Peak(workings, told, step, solvent, ppm), i);
        }
    }

    private static Explanation Mixture(Workings workings, Told told, PlanAirStep step) => Told.Sum(
        $"solvents together over their limit, during “{TitleOf(workings, step.Step)}”", Told.Plain(step.MixtureRatio, 2), step.MixtureRatio, "Em = Σ C/limit, its highest minute from the step's start to the end of its purge",
        "29 CFR 1910.1000(d)(2)(i) (published, read second-hand); each limit the lower of legal and recommended",
        [
            .. step.PeakPpm.Where(pair => pair.Value > LeastPpm)
                .OrderByDescending(pair => pair.Value / (Solvent(workings, pair.Key)?.LowestLongTerm?.Share.PartsPerMillion ?? double.MaxValue)).ThenBy(pair => pair.Key, StringComparer.Ordinal)
                .Select(pair => (Explanation?)(Peak(workings, told, step, pair.Key, pair.Value) with { Inputs = Limit(workings, pair.Key) })),
        ]);

    private static Explanation Lel(Workings workings, Told told, PlanAirStep step) => Told.Sum(
        $"vapour over the lower explosive limit, during “{TitleOf(workings, step.Step)}”", Told.Percent(step.LelRatio), step.LelRatio, "Σ C/LEL, its highest minute", "each LEL the lowest published one",
        [
            .. step.PeakPpm.Select(pair => Solvent(workings, pair.Key)).OfType<Solvent>().Where(solvent => solvent.LowerExplosiveLimit is not null).Select(solvent => (Explanation?)Told.Given(
                $"LEL of {solvent.Name}", Told.Percent(solvent.LowerExplosiveLimit!.Share.DecimalFractions), Told.From(solvent.LowerExplosiveLimitSource, solvent.LowerExplosiveLimit.Status))),
            told.Figure("lel-share-work"),
        ]);

    private static Explanation Purge(Workings workings, Told told, PlanAirStep step) => Told.Sum(
        $"minutes of exhaust after “{TitleOf(workings, step.Step)}” until Σ C/limit stays under 1", step.PurgeMin is { } minutes ? Told.Minutes(minutes) : "never with this exhaust", step.PurgeMin,
        "without a further source t = K·V/Q · ln(C1/C2); a wet film goes on feeding the room meanwhile", "MMWR 43 RR-13 (1994) Table S3-1 (published); films: the room itself",
        Exhaust(workings, told), Mixing(workings), Mixture(workings, told, step) with { Inputs = [] });

    private static Explanation Peak(Workings workings, Told told, PlanAirStep step, string solvent, double ppm)
    {
        var sprayed = workings.Dated.Steps.FirstOrDefault(known => known.Id == step.Step);
        var part = sprayed?.Label?.Solvents.FirstOrDefault(content => content.Solvent.Name == solvent);
        return Told.Sum(
            $"highest minute of {solvent} during “{TitleOf(workings, step.Step)}”", Told.Ppm(ppm), ppm, Balance, BalanceSource,
            sprayed?.Mass is { } mass ? Told.Given("contents sprayed in the step", told.Format.Mass(mass), "see its ml", mass.Grams) : null,
            part is { } share ? Told.Given($"share of {solvent}", Told.Percent(share.Share.DecimalFractions), told.Said(sprayed!.Label!, "solvents"), share.Share.DecimalFractions) : Told.Given($"share of {solvent} in the product sprayed here", "none", "what was sprayed before is still in the air"),
            told.Figure("released-at-once"), told.Figure("film-left-at-touch"),
            workings.Air.RoomM3 is { } room ? Told.Given("room", told.Format.Room(UnitsNet.Volume.FromCubicMeters(room)), Told.JobFile, room) : null,
            Exhaust(workings, told), Mixing(workings));
    }

    private static IEnumerable<Topic> Solvents(Workings workings, Told told)
    {
        for (var i = 0; i < workings.Air.BySolvent.Length; i++)
        {
            var one = workings.Air.BySolvent[i];
            var at = i;
            var solvent = Solvent(workings, one.Name)!;
            Topic Say(string field, string name, double number, string what, string formula, string source, params ImmutableArray<Explanation?> inputs) => new(
                $"air.bySolvent[{at}].{field}", [$"{name} {one.Name}", $"air.bySolvent[{one.Name}].{field}"], () => Told.Sum(what, Told.Ppm(number), number, formula, source, inputs));
            Topic Limit(string field, string name, ExposureLimit limit, string what) => new(
                $"air.bySolvent[{at}].{field}", [$"{name} {one.Name}", $"air.bySolvent[{one.Name}].{field}"],
                () => Told.Given(what, Told.Ppm(limit.Share.PartsPerMillion), Told.From(solvent.Provenance.Source, limit.Status), limit.Share.PartsPerMillion));

            yield return Say("peakPpm", "peak", one.PeakPpm, $"highest minute of {one.Name} over the plan", Balance, BalanceSource);
            yield return Say("mean15MinPpm", "15 min", one.Mean15MinPpm, $"highest mean of {one.Name} over 15 min", "mean of 15 minutes on end, the highest", "time of short-term limits");
            yield return Say("mean8HPpm", "8 h", one.Mean8HPpm, $"highest mean of {one.Name} over 8 h", "E = Σ C·T / 8 h", "29 CFR 1910.1000(d)(1)(i) (published, read second-hand)");
            if (solvent.LowestLongTerm is { } longTerm)
                yield return Limit("limitPpm", "limit", longTerm, $"the lower of the legal and the recommended limit of {one.Name} over 8 h");
            if (solvent.ShortTerm is { } shortTerm)
                yield return Limit("shortTermPpm", "short-term limit", shortTerm, $"limit of {one.Name} over 15 min");
            if (solvent.Ceiling is { } ceiling)
                yield return Limit("ceilingPpm", "ceiling", ceiling, $"limit of {one.Name} at any time");
            if (solvent.Idlh is { } idlh)
                yield return Limit("idlhPpm", "idlh", idlh, $"{one.Name}: immediately dangerous to life or health");
            if (one.MaximumUsePpm is { } use)
            {
                yield return Say("maximumUsePpm", "maximum use", use, $"the most of {one.Name} that the plan's respirator may be worn in", "assigned protection factor × limit, never above IDLH", "29 CFR 1910.134(d)(3)(i)(B) (published, read second-hand)",
                    workings.Respirator.Factor is { } factor ? Told.Given("assigned protection factor", Told.Plain(factor), "29 CFR 1910.134(d)(3)(i)(A) Table 1 (published, read second-hand)", factor) : null);
            }
        }
    }

    private static IEnumerable<Topic> Mends(Workings workings, Told told)
    {
        for (var i = 0; i < workings.Air.Mends.Length; i++)
        {
            var mend = workings.Air.Mends[i];
            var at = i;
            yield return new Topic($"air.mends[{at}].exhaustM3PerMin", [$"mend {mend.Code}", $"mend {mend.Code} exhaust"], () => Needed(workings, told, $"least exhaust at which {mend.Code} does not come up", mend.ExhaustM3PerMin));
            if (mend.BetweenMin is { } between)
            {
                yield return new Topic($"air.mends[{at}].betweenMin", [$"mend {mend.Code} between"], () => Told.Sum(
                    "least pause from the end of one go to the start of the next", Told.Minutes(between), between, "the shortest whole minutes at which all goes, one after another, stay under in every minute: found by halving", BalanceSource, Exhaust(workings, told)));
            }

            for (var j = 0; j < mend.AtATime.Length; j++)
            {
                var one = mend.AtATime[j];
                var place = j;
                if (one.Cans is { } cans)
                {
                    yield return new Topic($"air.mends[{at}].atATime[{place}].cans", [$"mend {mend.Code} {one.Product}"], () => Told.Sum(
                        $"the most of {one.Product} in one go", $"{Told.Plain(cans, 2)} of a can", cans, "packages of its heaviest coat ÷ the fewest like goes of which one alone, in clean air, stays under", BalanceSource, Exhaust(workings, told)));
                }

                yield return new Topic($"air.mends[{at}].atATime[{place}].goes", [$"mend {mend.Code} {one.Product} goes"], () => Told.Sum(
                    "goes that its heaviest coat is split into", Told.Plain(one.Goes), one.Goes, "the fewest of which one alone, in clean air, stays under", BalanceSource));
            }
        }
    }

    private static IEnumerable<Topic> Respirator(Workings workings, Told told)
    {
        var respirator = workings.Respirator;
        yield return new Topic("respirator", ["respirator"], () => Told.Sum(
            "what to breathe through", respirator.Kind, null, string.Join(" ", respirator.Why), "29 CFR 1910.134(d)(3)(i)(A) Table 1 (published, read second-hand)",
            respirator.Factor is { } known ? Factor(known) : null, respirator.CartridgeH is { } life ? Cartridge(workings, told, life) : null));
        if (respirator.Factor is { } factor)
            yield return new Topic("respirator.factor", ["protection factor"], () => Factor(factor));
        if (respirator.CartridgeH is { } hours)
            yield return new Topic("respirator.cartridgeH", ["cartridge"], () => Cartridge(workings, told, hours));
    }

    private static Explanation Factor(int factor) =>
        Told.Given("assigned protection factor", Told.Plain(factor), "29 CFR 1910.134(d)(3)(i)(A) Table 1 (published, read second-hand); it holds only inside a programme with fit test and care", factor);

    private static Explanation Cartridge(Workings workings, Told told, double hours) => Told.Sum(
        "hours of spraying after which cartridges are changed", $"{Told.Plain(hours, 1)} h", hours,
        workings.AirReport.BoilsLow.IsEmpty
            ? "8 h × (200 ppm ÷ C)^0.70 × humidity factor, at most a shift"
            : $"8 h × (200 ppm ÷ C)^0.70 × humidity factor, at most a shift, and at most the time for what boils low ({string.Join(", ", workings.AirReport.BoilsLow)})",
        "rule of thumb of agency guidance (published, read second-hand); 29 CFR 1910.134(d)(3)(iii)(B)(2) asks for a written schedule",
        Told.Given("C: highest minute of the vapour that cartridges hold", Told.Ppm(workings.AirReport.CartridgeLoad.PartsPerMillion), "the mixed room", workings.AirReport.CartridgeLoad.PartsPerMillion),
        told.Figure("cartridge-life"), told.Figure("cartridge-ppm"), told.Figure("cartridge-exponent"), told.Figure("cartridge-damp"),
        workings.AirReport.BoilsLow.IsEmpty ? null : told.Figure("cartridge-low-life"));

    private static Explanation Needed(Workings workings, Told told, string what, double flow, params ImmutableArray<Explanation?> inputs) => Told.Sum(
        what, told.Flow(flow), flow, "the room run again and again with more and less exhaust, the plan left as it is: found by halving, rounded up to 0.01 m³/min; 0 where the leaks of the room do it", BalanceSource,
        [Mixing(workings), told.Figure("air-leak-per-hour"), .. inputs]);

    private static Explanation Exhaust(Workings workings, Told told) => Told.Given("exhaust", told.Flow(workings.Air.ExhaustM3PerMin), Told.JobFile, workings.Air.ExhaustM3PerMin);

    private static Explanation Mixing(Workings workings) => Told.Given("mixing factor K, 1 is perfect", Told.Plain(workings.Air.Mixing, 1), "the job file, or 5 by its contract; up to 10 where air is poorly spread (CDC 2003 Table B.1, published)", workings.Air.Mixing);

    private static ImmutableArray<Explanation> Limit(Workings workings, string solvent) => Solvent(workings, solvent) is { LowestLongTerm: { } limit } known
        ? [Told.Given($"limit of {solvent} over 8 h", Told.Ppm(limit.Share.PartsPerMillion), Told.From(known.Provenance.Source, limit.Status), limit.Share.PartsPerMillion)]
        : [Told.Given($"limit of {solvent}", "none is known: left out and named", "presets, solvents")];

    private static IEnumerable<Explanation?> Limits(Workings workings) =>
        workings.Air.BySolvent.Where(one => one.LimitPpm is not null).Select(one => (Explanation?)Told.Given(
            $"{one.Name}: highest mean over 8 h, of its limit", $"{Told.Ppm(one.Mean8HPpm)} of {Told.Ppm(one.LimitPpm!.Value)}", "presets, solvents; the mixed room"));

    private static Solvent? Solvent(Workings workings, string name) => workings.AirReport.BySolvent.FirstOrDefault(one => one.Solvent.Name == name)?.Solvent;

    private static int NumberOf(Workings workings, string id) => workings.Steps.TakeWhile(step => step.Id != id).Count() + 1;

    private static string TitleOf(Workings workings, string id) => workings.Steps.FirstOrDefault(known => known.Id == id)?.Title ?? id;
}
