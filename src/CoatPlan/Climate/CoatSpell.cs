namespace CoatPlan.Climate;

/// <summary>When one coat may start on one piece.</summary>
internal sealed class CoatSpell
{
    private readonly PlaceClimate place;
    private readonly SurfaceCurve metal;
    private readonly RateLaw law;
    private readonly double need;
    private readonly StartRules rules;
    private readonly Stretches wet;
    private readonly Stretches? spraying;
    private readonly Memo<Sprayed, MinuteMemo> falling;
    private readonly int minuteOfDay;

    /// <summary>A coat of one product on one piece.</summary>
    /// <param name="place">Where.</param>
    /// <param name="metal">The piece.</param>
    /// <param name="rules">What the label and the sky ask.</param>
    /// <param name="wet">The minutes at which a wet film may be there.</param>
    /// <param name="law">How the film dries.</param>
    /// <param name="need">How much of it until it can be touched.</param>
    public CoatSpell(PlaceClimate place, SurfaceCurve metal, StartRules rules, Stretches wet, RateLaw law, double need)
    {
        (this.place, this.metal, this.rules, this.wet, this.law, this.need) = (place, metal, rules, wet, law, need);
        spraying = place.Outdoors ? new Stretches(metal, (day, index) => rules.MaySpray(State(day, index))) : null;
        falling = new Memo<Sprayed, MinuteMemo>(coat => new MinuteMemo(metal, (day, index) =>
            FirstBreachWithHeaterOff(day * Days<AirDay>.Minutes + index, coat.Minutes) is null));
        minuteOfDay = MinuteOfDay(place);
    }

    /// <summary>The minutes at which a wet film may be on a piece.</summary>
    public static Stretches MayBeWet(PlaceClimate place, SurfaceCurve metal, StartRules rules)
    {
        var start = MinuteOfDay(place);
        return new Stretches(metal, (day, index) => rules.MayBeWet(State(metal, start, day, index)));
    }

    private static int MinuteOfDay(PlaceClimate place) => place.Start.Hour * 60 + place.Start.Minute;

    /// <summary>The first permitted start from a minute on.</summary>
    public int? First(int from, int minutes)
    {
        from = Math.Max(0, from);
        if (place.HasOpenHeater)
        {
            return falling[new Sprayed(minutes)].NextPermitted(from, CoatStarts.HorizonMinutes);
        }

        while (wet.NextPermitted(from, CoatStarts.HorizonMinutes) is { } start && TouchDry(start, minutes) is { } dry)
        {
            // Whoever starts later is dry later: each start up to the forbidden minute meets it too.
            if ((wet.NextForbidden(start, dry) ?? spraying?.NextForbidden(start, start + minutes)) is not { } forbidden)
            {
                return start;
            }

            from = forbidden + 1;
        }

        return null;
    }

    /// <summary>The last permitted start up to a minute that follows on a permitted one without a break.</summary>
    public int Last(int start, int minutes, int until)
    {
        if (place.HasOpenHeater)
        {
            return (falling[new Sprayed(minutes)].NextForbidden(start, until) ?? until + 1) - 1;
        }

        var forbidden = Earlier(wet.NextForbidden(start, until), spraying?.NextForbidden(start, until));
        var (low, high) = (start, (forbidden ?? until + 1) - 1);
        while (low < high)
        {
            var middle = low + (high - low + 1) / 2;
            (low, high) = StaysPermitted(start, middle, minutes) ? (middle, high) : (low, middle - 1);
        }

        return low;
    }

    /// <summary>What would first go wrong with a start; null when nothing.</summary>
    public (int Minute, Breach Breach)? FirstBreach(int start, int minutes)
    {
        if (place.HasOpenHeater)
        {
            return FirstBreachWithHeaterOff(start, minutes);
        }

        var dry = TouchDry(start, minutes);
        var broken = Earlier(
            wet.NextForbidden(start, dry ?? CoatStarts.HorizonMinutes), spraying?.NextForbidden(start, start + minutes));
        if (broken is { } minute)
        {
            var state = State(minute);
            return (minute, (minute <= start + minutes ? rules.BrokenWhileSpraying(state) : rules.BrokenWhileWet(state))!.Value);
        }

        return dry is null ? (start, new Breach(StartRule.NeverDry, 0, 0)) : null;
    }

    /// <summary>The first minute after another at which a rule is no longer broken.</summary>
    public int? Over(StartRule rule, int from)
    {
        for (var minute = from + 1; minute <= CoatStarts.HorizonMinutes; minute++)
        {
            if (rules.BrokenWhileSpraying(State(minute))?.Rule != rule)
            {
                return minute;
            }
        }

        return null;
    }

    /// <summary>When the film can be touched; null: never.</summary>
    public int? TouchDry(int start, int minutes) => place.HasOpenHeater
        ? TouchDryWithHeaterOff(Math.Max(0, start), minutes)
        : metal.Drying(law).Reaches(start + minutes, need);

    private bool StaysPermitted(int start, int last, int minutes) =>
        TouchDry(last, minutes) is { } dry
        && wet.NextForbidden(start, dry) is null
        && spraying?.NextForbidden(start, last + minutes) is null;

    /// <summary>What goes wrong where the heater is off from the start of the coat, and what it gave the air fades.</summary>
    private (int Minute, Breach Breach)? FirstBreachWithHeaterOff(int start, int minutes)
    {
        for (var film = AfterHeater(start, minutes); film.Minute <= start + minutes + Days<AirDay>.Minutes; film.Step())
        {
            if ((film.Minute <= start + minutes ? rules.BrokenWhileSpraying(film.State) : rules.BrokenWhileWet(film.State)) is { } breach)
            {
                return (film.Minute, breach);
            }

            if (IsTouchDry(film))
            {
                return null;
            }
        }

        return (start, new Breach(StartRule.NeverDry, 0, 0));
    }

    private int? TouchDryWithHeaterOff(int start, int minutes)
    {
        for (var film = AfterHeater(start, minutes); film.Minute <= start + minutes + Days<AirDay>.Minutes; film.Step())
        {
            if (IsTouchDry(film))
            {
                return film.Minute;
            }
        }

        return null;
    }

    // Followed for a day after the spraying: by then nothing of the heater is left.
    private FilmAfterHeater AfterHeater(int start, int minutes) => new(metal, law, State(start), start, minutes, minuteOfDay);

    private bool IsTouchDry(in FilmAfterHeater film) => film.IsOn && film.Done >= need - CoatStarts.Rounding;

    private MinuteState State(int minute)
    {
        var (day, index) = AirCurve.Split(minute);
        return State(day, index);
    }

    private MinuteState State(int day, int index) => State(metal, minuteOfDay, day, index);

    private static MinuteState State(SurfaceCurve metal, int minuteOfDay, int day, int index)
    {
        var air = metal.Air.Day(day);
        return MinuteState.Under(
            air.Weather, index, minuteOfDay, air.Celsius[index], air.Relative[index], air.DewCelsius[index], metal.Day(day)[index]);
    }

    private static int? Earlier(int? one, int? other) => one is null || other < one ? other : one;

    /// <summary>How long the spraying of a coat takes.</summary>
    private readonly record struct Sprayed(int Minutes);
}
