using CoatPlan.Jobs;
using CoatPlan.Presets;
using CoatPlan.Vapour;
using UnitsNet;

namespace CoatPlan.Air;

/// <summary>What will be breathed, and what could burn.</summary>
public static class WorkAir
{
    private static readonly Duration ShortTerm = Duration.FromMinutes(15);
    private static readonly Duration Moment = Duration.FromMinutes(1);

    /// <summary>The air of a work place over a dated plan.</summary>
    /// <remarks>
    /// A well-mixed room, C′ = (G − Q/K·C)/V, solved within each minute with everything that is wet then. It understates the breathing zone of the person
    /// spraying and the heavy vapour at the floor.
    /// </remarks>
    /// <param name="place">Where the work is done.</param>
    /// <param name="releases">The steps that give off vapour, in any order.</param>
    /// <param name="figures">The leak of a closed room, and the share of the lower explosive limit that is worked to.</param>
    /// <exception cref="ArgumentException">A step that ends before it starts.</exception>
    public static AirReport Of(Place place, ImmutableArray<DatedRelease> releases, Figures figures)
    {
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(figures);
        foreach (var release in releases)
        {
            if (release.End < release.Start)
                throw new ArgumentException($"step {release.Step} ends at {release.End} before it starts at {release.Start}", nameof(releases));
        }

        ImmutableArray<DatedRelease> ordered = [.. releases.OrderBy(release => release.Start).ThenBy(release => release.Step, StringComparer.Ordinal)];
        return WorkRoom.Of(place, figures) is { } room && !ordered.IsEmpty
            ? Indoors(room, WorkRoom.Of(place with { Exhaust = VolumeFlow.Zero }, figures)!, ordered, figures)
            : WithoutGathering(WorkRoom.Of(place, figures), ordered, figures);
    }

    private static AirReport Indoors(WorkRoom room, WorkRoom leaking, ImmutableArray<DatedRelease> releases, Figures figures)
    {
        var zero = releases[0].Start;
        var trace = AirTrace.Of(room, releases, zero);
        var exposures = Exposures(trace);
        var lelShare = figures.Share("lel-share-work").DecimalFractions;
        var lowBoiling = figures.Temperature("cartridge-low-boiling");
        var sums = trace.Sums(
            Ratios.OfLimit,
            Ratios.OfLel,
            (solvent, share) => BoilsLow(solvent, lowBoiling) ? 0 : share,
            static (solvent, share) => solvent.Propellant ? Ratios.OfLimit(solvent, share) : 0);
        var (mixture, lel, forCartridge, propellant) = (sums[0], sums[1], sums[2], sums[3]);
        var exhaustForLimit = NeededExhaust.For(leaking, releases, Ratios.OfLimit, 1);
        var exhaustForLel = NeededExhaust.For(leaking, releases, Ratios.OfLel, lelShare);
        return new AirReport
        {
            Room = room,
            ByStep = StepWindows.Of(trace, mixture, lel, releases, zero),
            TwaMixtureRatio = trace.HighestMean(mixture, (int)Ratios.Shift.TotalMinutes),
            PropellantRatio = trace.HighestMean(propellant, 1),
            ShortLimitsPassed = ShortLimitsPassed(exposures),
            BySolvent = exposures,
            CartridgeLoad = Ratio.FromDecimalFractions(trace.HighestMean(forCartridge, 1)),
            BoilsLow = [.. trace.Solvents.Where(solvent => BoilsLow(solvent, lowBoiling)).Select(solvent => solvent.Name)],
            Mends = [.. Mends()],
            WithoutLimit = WithoutLimit(releases),
            ExhaustForLimit = exhaustForLimit,
            ExhaustForLel = exhaustForLel,
            DilutionForLimit = releases.Max(release => Dilution(room, release)),
            DilutionForLel = releases.Max(release => DilutionForLel(release, figures.Share("lel-share-work"))),
        };

        // What would mend each limit that is passed, the most pressing first.
        IEnumerable<AirMend> Mends()
        {
            if (Passes(lel, lelShare))
                yield return AirMends.Of("over-lel", room, exhaustForLel, releases, Ratios.OfLel, lelShare);
            if (exposures.Where(exposure => exposure.Solvent.Idlh is not null).MaxBy(OverIdlh) is { Solvent: var worst } most && OverIdlh(most) >= 1)
            {
                yield return AirMends.Of("over-idlh", room, NeededExhaust.For(leaking, releases, OfIdlh(worst), 1), releases, OfIdlh(worst), 1);
            }

            if (Passes(mixture, 1))
                yield return AirMends.Of("over-limit", room, exhaustForLimit, releases, Ratios.OfLimit, 1);
        }

        bool Passes(double[] measure, double under) => trace.HighestMean(measure, 1) >= under;
    }

    private static Func<Solvent, double, double> OfIdlh(Solvent own) =>
        (solvent, share) => solvent.Name == own.Name ? share / own.Idlh!.Share.DecimalFractions : 0;

    private static bool BoilsLow(Solvent solvent, Temperature limit) => solvent.Propellant || solvent.Boiling <= limit;

    private static double OverIdlh(SolventExposure exposure) => exposure.Peak / exposure.Solvent.Idlh!.Share;

    private static ImmutableArray<SolventExposure> Exposures(AirTrace trace)
    {
        var (peaks, shortTerms, shifts) = (Highest(Moment), Highest(ShortTerm), Highest(Ratios.Shift));
        return
        [
            .. trace.Solvents.Select((solvent, i) => new SolventExposure(
                solvent, Ratio.FromDecimalFractions(peaks[i]), Ratio.FromDecimalFractions(shortTerms[i]), Ratio.FromDecimalFractions(shifts[i]))),
        ];

        double[] Highest(Duration over) => trace.HighestMeans((int)over.TotalMinutes);
    }

    private static AirReport WithoutGathering(WorkRoom? room, ImmutableArray<DatedRelease> releases, Figures figures) => new()
    {
        Room = room,
        ByStep = [.. releases.Select(release => new StepAir(release.Step, [], 0, 0, Duration.Zero))],
        TwaMixtureRatio = 0,
        PropellantRatio = 0,
        ShortLimitsPassed = [],
        BoilsLow =
        [
            .. releases.SelectMany(release => release.Release.Solvents).Select(part => part.Solvent)
                .Where(solvent => BoilsLow(solvent, figures.Temperature("cartridge-low-boiling"))).Select(solvent => solvent.Name).Distinct().Order(StringComparer.Ordinal),
        ],
        WithoutLimit = WithoutLimit(releases),
        ExhaustForLimit = null,
        ExhaustForLel = null,
        DilutionForLimit = null,
    };

    /// <summary>The textbook's figure: Q = K · Σ G/limit, all of the coat taken as given off while it is sprayed.</summary>
    private static VolumeFlow Dilution(WorkRoom room, DatedRelease release)
    {
        var minutes = Math.Max(1, RoomSources.MinuteOf(release.End, release.Start));
        var roomsOfLimit = release.Release.Solvents.Sum(part => Ratios.OfLimit(part.Solvent, Ratios.ShareOf(part.Total, part.Solvent, room)));
        return VolumeFlow.FromCubicMetersPerMinute(room.Mixing * roomsOfLimit * room.Volume.CubicMeters / minutes);
    }

    /// <summary>Air that dilutes each solvent to a share of its lower explosive limit, added up and brought out while it is sprayed. Source: 29 CFR 1910.94(c)(6)(ii).</summary>
    private static VolumeFlow DilutionForLel(DatedRelease release, Ratio share)
    {
        var minutes = Math.Max(1, RoomSources.MinuteOf(release.End, release.Start));
        var air = release.Release.Solvents.Where(part => part.Solvent.LowerExplosiveLimit is not null && part.Total.Grams > 0).Sum(part =>
        {
            var liquid = part.Total / part.Solvent.Density;
            var vapourPerLiquid = Concentration.VapourOf(part.Total, part.Solvent.MolarMass) / liquid;
            return liquid.CubicMeters * Ratios.DilutionPerLiquid(vapourPerLiquid, part.Solvent.LowerExplosiveLimit!.Share, share);
        });
        return VolumeFlow.FromCubicMetersPerMinute(air / minutes);
    }

    private static ImmutableArray<string> WithoutLimit(ImmutableArray<DatedRelease> releases) =>
    [
        .. releases.SelectMany(release => release.Release.Solvents).Select(part => part.Solvent)
            .Where(solvent => solvent.LowestLongTerm is null).Select(solvent => solvent.Name).Distinct().Order(StringComparer.Ordinal),
    ];

    private static ImmutableArray<ShortLimitPassed> ShortLimitsPassed(ImmutableArray<SolventExposure> exposures)
    {
        var passed = ImmutableArray.CreateBuilder<ShortLimitPassed>();
        foreach (var exposure in exposures)
        {
            Check(exposure.Solvent, exposure.Solvent.ShortTerm, ShortTerm, exposure.ShortTerm);
            Check(exposure.Solvent, exposure.Solvent.Ceiling, Moment, exposure.Peak);
        }

        return passed.ToImmutable();

        void Check(Solvent solvent, ExposureLimit? limit, Duration over, Ratio mean)
        {
            if (limit is not null && mean > limit.Share)
                passed.Add(new ShortLimitPassed(solvent, over, mean, limit.Share));
        }
    }
}
