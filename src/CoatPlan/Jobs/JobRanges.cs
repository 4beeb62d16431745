using CoatPlan.Problems;

namespace CoatPlan.Jobs;

/// <summary>What the figures of a job file may be; the reader, its messages, the schema and the reference read it here.</summary>
public static class JobRanges
{
    private const string Metres = "m";

    /// <summary>Format number.</summary>
    public static readonly Bounds Format = new(1, 1);

    /// <summary>Share added to the likely demand, and other shares that may pass the whole.</summary>
    public static readonly Bounds OpenShare = new(0, 1000, "%");

    /// <summary>Share of a whole.</summary>
    public static readonly Bounds Share = new(0, 100, "%");

    /// <summary>Share of which something must be left: a loss, a spread, solids with their solvent.</summary>
    public static readonly Bounds ShareBelowWhole = new(0, 99, "%");

    /// <summary>Relative humidity.</summary>
    public static readonly Bounds Humidity = new(0, 100, "%");

    /// <summary>Year in which a vehicle was built.</summary>
    public static readonly Bounds Built = new(1880, 2200);

    /// <summary>Year of a date.</summary>
    public static readonly Bounds Year = new(1970, 2200);

    /// <summary>A length; a longer one is a slip.</summary>
    public static readonly Bounds Length = new(0, 100_000, Metres, LeastIsOut: true);

    /// <summary>A length that may be nothing, such as the top of a pointed cone.</summary>
    public static readonly Bounds LengthOrNone = new(0, 100_000, Metres);

    /// <summary>An area; a larger one is a slip.</summary>
    public static readonly Bounds Area = new(0, 1_000_000, "m2", LeastIsOut: true);

    /// <summary>Volume of a room.</summary>
    public static readonly Bounds RoomVolume = new(0, 1_000_000, "m3", LeastIsOut: true);

    /// <summary>Air led outdoors.</summary>
    public static readonly Bounds Exhaust = new(0, 100_000, "m3/min");

    /// <summary>Mixing factor K, 1 is perfect.</summary>
    public static readonly Bounds Mixing = new(1, 10);

    /// <summary>Air temperature in which somebody works.</summary>
    public static readonly Bounds AirTemperature = new(-60, 80, "°C");

    /// <summary>Temperature in service or in an oven.</summary>
    public static readonly Bounds PartTemperature = new(-60, 2000, "°C");

    /// <summary>Distance above the dew point.</summary>
    public static readonly Bounds AboveDew = new(0, 50, "°C");

    /// <summary>A time that may be nothing.</summary>
    public static readonly Bounds Time = new(0, 3650, "d");

    /// <summary>A time that must be something.</summary>
    public static readonly Bounds TimeMoreThanNone = new(0, 3650, "d", LeastIsOut: true);

    /// <summary>People.</summary>
    public static readonly Bounds People = new(1, 100);

    /// <summary>Stations, and batches sprayed at once.</summary>
    public static readonly Bounds Stations = new(1, 200);

    /// <summary>Entries of working hours: years of single dates.</summary>
    public static readonly Bounds HoursEntries = new(1, 1000);

    /// <summary>Pieces.</summary>
    public static readonly Bounds Pieces = new(1, 10_000);

    /// <summary>Full coats of a layer.</summary>
    public static readonly Bounds Coats = new(1, 20);

    /// <summary>Coat that was done; 0 is the mist coat.</summary>
    public static readonly Bounds DoneCoat = new(0, 20);

    /// <summary>Packages sold together.</summary>
    public static readonly Bounds Pack = new(1, 1000);

    /// <summary>Net contents by mass.</summary>
    public static readonly Bounds NetMass = new(0, 1_000_000, "g", LeastIsOut: true);

    /// <summary>Net contents by volume.</summary>
    public static readonly Bounds NetVolume = new(0, 1_000_000, "mL", LeastIsOut: true);

    /// <summary>An amount that is on the shelf or left; zero: none.</summary>
    public static readonly Bounds Amount = new(0, 1_000_000);

    /// <summary>Money.</summary>
    public static readonly Bounds Money = new(0, 1_000_000_000);

    /// <summary>Density of a liquid with its propellant.</summary>
    public static readonly Bounds Density = new(0.1, 20, "kg/L");

    /// <summary>Dry film of one coat.</summary>
    public static readonly Bounds DryFilm = new(0, 0.01, Metres, LeastIsOut: true);

    /// <summary>Contrast ratio of one coat.</summary>
    public static readonly Bounds ContrastRatio = new(0, 1, LeastIsOut: true);

    /// <summary>CIE L*.</summary>
    public static readonly Bounds LStar = new(0, 100);

    /// <summary>True over outline area.</summary>
    public static readonly Bounds Relief = new(1, 20);

    /// <summary>Thickness of sheet and castings.</summary>
    public static readonly Bounds Gauge = new(0, 1, Metres, LeastIsOut: true);

    /// <summary>Angle of a bend.</summary>
    public static readonly Bounds Angle = new(0, 360, "°", LeastIsOut: true);

    /// <summary>Sides of a panel, a disc or a ring.</summary>
    public static readonly Bounds Sides = new(1, 2);

    /// <summary>Faces of a box: 6 all, 5 no top, 4 sides only.</summary>
    public static readonly Bounds Faces = new(4, 6);

    /// <summary>Closed ends of a tube.</summary>
    public static readonly Bounds Ends = new(0, 2);

    /// <summary>Pressure of a cylinder or of a cooling system.</summary>
    public static readonly Bounds Pressure = new(0, 100_000, "kPa");
}
