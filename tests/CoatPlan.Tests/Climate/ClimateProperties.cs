using CoatPlan.Climate;
using CoatPlan.Jobs;
using CoatPlan.Presets;
using CsCheck;
using UnitsNet;

namespace CoatPlan.Tests.Climate;

/// <summary>What holds in any weather, for any label and any piece.</summary>
public class ClimateProperties
{
    private static readonly Gen<Weather> AnyWeather = Gen.OneOf(
        Gen.Select(Gen.Double[20, 100], Gen.Double[5, 100]).Select((air, humidity) => Samples.Steady(air, humidity)),
        Gen.Select(Gen.Double[20, 80], Gen.Double[0, 40], Gen.Double[10, 75]).Select((low, range, dew) => Samples.Daily(low, low + range, dew)));

    private static readonly Gen<Place> AnyPlace = Gen.Select(AnyWeather, Gen.Double[50, 75], Gen.Int[0, 2]).Select((weather, hold, heater) => Samples.Garage(weather) with
    {
        Hold = heater == 0 ? null : Samples.Fahrenheit(hold),
        Heater = heater == 1 ? HeaterKind.Sealed : HeaterKind.Open,
    });

    private static readonly Gen<Duration> AnyLag = Gen.Double[0, 90].Select(Duration.FromMinutes);

    private static readonly Gen<DryingKind> AnyDrying = Gen.Enum<DryingKind>();

    private static readonly Gen<DryingStage> AnyStage = Gen.Enum<DryingStage>();

    private static readonly Gen<bool> Tabled = Gen.Bool;

    [Fact]
    public void The_dew_point_is_never_above_the_air_nor_humidity_above_saturation() =>
        Gen.Select(AnyPlace, Gen.Int[0, 10_000]).Sample((place, minute) =>
        {
            var air = Samples.In(place).WithHeaterOff(new HeaterOff(200, 900), new HeaterOff(3000)).Air.At(minute);
            return air.DewPoint.DegreesCelsius <= air.Air.DegreesCelsius + 1e-9 && air.Humidity.DecimalFractions is > 0 and <= 1;
        });

    [Fact]
    public void A_colder_garage_never_dries_sooner() =>
        Gen.Select(Gen.Double[25, 95], Gen.Double[0, 30], Gen.Double[0, 25], Gen.Double[5, 100], AnyLag, AnyDrying, AnyStage, Gen.Int[0, 3000])
            .Sample((air, range, colder, humidity, lag, drying, stage, from) =>
            {
                var label = Label(drying, Tables.None);
                var (warm, cold) = (Day(air), Day(air - colder));
                return Later(Drying.Reaches(label, stage, cold.Metal(lag), from), Drying.Reaches(label, stage, warm.Metal(lag), from));

                PlaceClimate Day(double low) => Samples.In(new DailyWeather
                {
                    Low = Samples.Fahrenheit(low), High = Samples.Fahrenheit(low + range), Humidity = Ratio.FromPercent(humidity),
                });
            });

    [Fact]
    public void A_coat_that_ends_later_is_never_dry_sooner() =>
        Gen.Select(AnyPlace, AnyLag, AnyDrying, AnyStage, Tabled, Gen.Int[-200, 4000], Gen.Int[0, 600])
            .Sample((place, lag, drying, stage, tabled, from, later) =>
            {
                var metal = Samples.In(place).WithHeaterOff(new HeaterOff(500, 1500)).Metal(lag);
                var label = Label(drying, tabled ? Tables.Own : Tables.None);
                return Later(Drying.Reaches(label, stage, metal, from + later), Drying.Reaches(label, stage, metal, from));
            });

    [Fact]
    public void No_wait_is_shorter_than_the_labels() =>
        Gen.Select(AnyPlace, AnyLag, AnyDrying, Tabled, Gen.Int[0, 4000]).Sample((place, lag, drying, tabled, from) =>
        {
            var metal = Samples.In(place).Metal(lag);
            var label = Label(drying, tabled ? Tables.Own : Tables.None);
            return Later(Drying.Reaches(label, DryingStage.Touch, metal, from), from + 25)
                && Later(Drying.Reaches(label, DryingStage.Through, metal, from), from + 1440)
                && Later(Windows.Opens(label, RecoatGap.Itself, 0, metal, from), from + 10);
        });

    [Fact]
    public void A_window_never_stays_open_longer_than_the_labels_and_heat_never_lengthens_it() =>
        Gen.Select(AnyWeather, AnyLag, AnyDrying, Gen.Double[0, 30], Gen.Int[0, 4000]).Sample((weather, lag, drying, warmer, from) =>
        {
            var label = Label(drying, Tables.None);
            var closes = Windows.Closes(label, RecoatGap.Itself, 0, Samples.In(weather).Metal(lag), from);
            var heated = Windows.Closes(label, RecoatGap.Itself, 0, Samples.In(Warmer(weather, warmer)).Metal(lag), from);
            return closes <= from + 60 && heated <= closes;
        });

    [Fact]
    public void A_window_of_a_later_coat_never_closes_sooner() =>
        Gen.Select(AnyPlace, AnyLag, AnyDrying, Tabled, Gen.Int[-200, 4000], Gen.Int[0, 600]).Sample((place, lag, drying, tabled, from, later) =>
        {
            var metal = Samples.In(place).Metal(lag);
            var label = Label(drying, tabled ? Tables.Own : Tables.None);
            return Windows.Closes(label, RecoatGap.Itself, 0, metal, from) <= Windows.Closes(label, RecoatGap.Itself, 0, metal, from + later);
        });

    /// <summary>Looked at minute by minute, without any look-up.</summary>
    [Fact]
    public void The_first_permitted_start_is_the_first_of_all_minutes() =>
        Gen.Select(AnyWeather, AnyLag, Gen.Bool, Gen.Int[0, 2000], Gen.Int[0, 40]).Sample((weather, lag, outdoors, from, minutes) =>
        {
            var climate = Samples.In(outdoors ? Samples.Yard(weather) : Samples.Garage(weather));
            var label = Label(DryingKind.Oxidation, Tables.None) with { Limits = Samples.UsualLimits };
            var metal = climate.Metal(lag);

            var first = CoatStarts.Of(climate, label, metal).First(from, minutes);

            int? slow = Enumerable.Range(from, 2000).Where(Permitted).Select(minute => (int?)minute).FirstOrDefault();
            return slow == (first < from + 2000 ? first : null);

            bool Permitted(int start) => Drying.Reaches(label, DryingStage.Touch, metal, start + minutes) is { } dry
                && Enumerable.Range(start, dry - start + 1).All(minute => Good(metal.At(minute), climate.Start.PlusMinutes(minute)));

            // Rounding is forgiven in what the curves are computed in: °C and shares. 1e-6 % of humidity would be a hundred times as strict.
            bool Good(Conditions at, LocalDateTime time) =>
                at.Air.DegreesCelsius is >= 10 - 1e-6 and <= 290.0 / 9 + 1e-6 && at.Surface.DegreesCelsius is >= 10 - 1e-6 and <= 290.0 / 9 + 1e-6
                && at.Humidity.DecimalFractions <= 0.65 + 1e-6 && (at.Surface - at.DewPoint).Kelvins >= 3 - 1e-6
                && !(outdoors && time.Hour is >= 19 or < 8 && outdoors);
        }, iter: 200);

    [Fact]
    public void The_last_start_up_to_a_minute_is_the_last_of_all_or_that_minute() =>
        Gen.Select(AnyPlace, AnyLag, Gen.Int[0, 2000], Gen.Int[0, 40], Gen.Int[0, 600]).Sample((place, lag, from, minutes, further) =>
        {
            var climate = Samples.In(place);
            var starts = CoatStarts.Of(climate, Samples.Black with { Limits = Samples.UsualLimits }, climate.Metal(lag));
            return starts.First(from, minutes) is not { } first
                || starts.Last(first, minutes, first + further) == Math.Min(starts.Last(first, minutes), Math.Min(first + further, CoatStarts.HorizonMinutes));
        }, iter: 200);

    [Fact]
    public void Every_minute_of_a_permitted_range_is_permitted_and_the_next_is_not() =>
        Gen.Select(AnyPlace, AnyLag, Gen.Int[0, 2000], Gen.Int[0, 40]).Sample((place, lag, from, minutes) =>
        {
            var climate = Samples.In(place);
            var starts = CoatStarts.Of(climate, Samples.Black with { Limits = Samples.UsualLimits }, climate.Metal(lag));
            return starts.Ranges(from, from + 1440, minutes).All(range =>
                Enumerable.Range(range.First, range.Last - range.First + 1).All(start => starts.WhyNot(start, minutes) is null)
                && (range.Last == from + 1440 || starts.WhyNot(range.Last + 1, minutes) is not null));
        }, iter: 60);

    private static Weather Warmer(Weather weather, double fahrenheit)
    {
        var delta = TemperatureDelta.FromDegreesFahrenheit(fahrenheit);
        return weather switch
        {
            SteadyWeather steady => steady with { Air = steady.Air + delta },
            DailyWeather daily => daily with { Low = daily.Low + delta, High = daily.High + delta, DewPoint = daily.DewPoint + delta },
            _ => throw new ArgumentOutOfRangeException(nameof(weather)),
        };
    }

    private static Label Label(DryingKind drying, Tables tables) => Samples.Black with
    {
        Drying = drying,
        TimesAt = tables == Tables.None ? [] :
            [new(Samples.Fahrenheit(45), Samples.Times(2.5), []), new(Samples.Fahrenheit(70), Samples.Times(1), []), new(Samples.Fahrenheit(90), Samples.Times(0.6), [])],
    };

    private static bool Later(int? one, int? other) => one is null || (other is not null && one >= other);

    private enum Tables
    {
        None,
        Own,
    }
}
