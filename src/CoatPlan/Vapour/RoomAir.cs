namespace CoatPlan.Vapour;

/// <summary>A well-mixed room that several sources feed, minute by minute and exact within each minute.</summary>
/// <remarks>
/// It follows one or more measures at once: a concentration, or a sum of concentrations each over its limit. All are linear in what is given off,
/// so that two batches together make the sum of each alone.
/// </remarks>
internal sealed class RoomAir
{
    /// <summary>Share of a coat's film solvent that counts as gone.</summary>
    private const double Gone = 1e-7;

    private readonly ExactMinute minute;
    private readonly ImmutableArray<RoomSource> sources;
    private readonly (double End, double Mean)[] fadings;
    private readonly double[] atOnce;
    private readonly double[] fromFilm;
    private readonly (int First, int End, double Share, double Rate, double Kept)[] sprayings;
    private readonly double[] films;
    private readonly double[] levels;
    private readonly double[] means;
    private readonly List<int> active = [];
    private int next;

    /// <summary>An empty room at the first source's first minute.</summary>
    /// <param name="ratePerMinute">Share of the vapour that goes each minute, at least 0.</param>
    /// <param name="sources">In the order of their first minutes.</param>
    /// <param name="measures">How many measures each source feeds.</param>
    public RoomAir(double ratePerMinute, ImmutableArray<RoomSource> sources, int measures)
    {
        minute = new ExactMinute(ratePerMinute);
        this.sources = sources;
        fadings = [.. sources.Select(source => (minute.FadingEnd(source.FilmRate), minute.FadingMean(source.FilmRate)))];
        sprayings = [.. sources.Select(source => (source.First, source.First + source.Minutes, source.SharePerMinute, source.FilmRate, source.FilmKept))];
        films = new double[sources.Length];
        // Side by side, since every minute of a long job walks over them.
        atOnce = [.. sources.SelectMany(source => source.AtOnce)];
        fromFilm = [.. sources.SelectMany(source => source.FromFilm)];
        levels = new double[measures];
        means = new double[measures];
        Now = sources.IsEmpty ? 0 : sources[0].First;
    }

    /// <summary>The minute that the next step covers.</summary>
    public int Now { get; private set; }

    /// <summary>Mean of each measure over the minute last stepped.</summary>
    public ReadOnlySpan<double> Means => means;

    /// <summary>Each measure at the end of the minute last stepped.</summary>
    public ReadOnlySpan<double> Levels => levels;

    /// <summary>Whether nothing is sprayed or wet now, nor will be.</summary>
    public bool HasNoMoreToCome => active.Count == 0 && next == sources.Length;

    /// <summary>First minute of the next source to start; null where all have started.</summary>
    public int? NextStart => next < sources.Length ? sources[next].First : null;

    /// <summary>Whether a film is wet or a source sprays.</summary>
    public bool IsFed => active.Count > 0 || NextStart == Now;

    /// <summary>Steps one minute.</summary>
    public void Step()
    {
        while (NextStart == Now)
            active.Add(next++);

        for (var m = 0; m < levels.Length; m++)
        {
            means[m] = levels[m] * minute.KeptMean;
            levels[m] *= minute.Kept;
        }

        var wet = 0;
        foreach (var source in active)
            Feed(source);
        for (var i = 0; i < active.Count; i++)
        {
            if (films[active[i]] >= Gone || Now < sprayings[active[i]].End)
                active[wet++] = active[i];
        }

        active.RemoveRange(wet, active.Count - wet);
        Now++;
    }

    /// <summary>Goes on at the next source's start with an empty room.</summary>
    public void SkipToNextStart()
    {
        Array.Clear(levels);
        Now = NextStart ?? throw new InvalidOperationException("All sources have started.");
    }

    private void Feed(int index)
    {
        ref readonly var source = ref sprayings[index];
        var gain = Now < source.End ? source.Share : 0;
        // The film gains at a steady pace while it is sprayed and fades at its own rate, so what it gives off is a steady part and a fading one.
        var fadingFilm = (source.Rate * films[index]) - gain;
        var (fadingEnd, fadingMean) = fadings[index];
        var (steadyEnd, steadyMean) = (minute.SteadyEnd, minute.SteadyMean);
        var film = fromFilm.AsSpan(index * levels.Length, levels.Length);
        var now = atOnce.AsSpan(index * levels.Length, levels.Length);
        for (var m = 0; m < film.Length; m++)
        {
            var steady = gain * (now[m] + film[m]);
            var fading = fadingFilm * film[m];
            levels[m] += (steady * steadyEnd) + (fading * fadingEnd);
            means[m] += (steady * steadyMean) + (fading * fadingMean);
        }

        films[index] = (films[index] * source.Kept) + (gain / source.Rate * (1 - source.Kept));
    }
}
