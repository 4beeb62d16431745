using UnitsNet;

namespace CoatPlan.Jobs;

/// <summary>What holds where a job file says nothing.</summary>
public static class JobDefaults
{
    /// <summary>Share added to the likely paint demand: 10 %.</summary>
    public static readonly Ratio Reserve = Ratio.FromPercent(10);

    /// <summary>Longest time that tape stays on: 24 h. Source: from memory.</summary>
    public static readonly Duration TapeLimit = Duration.FromHours(24);

    /// <summary>Mixing factor K of a room: 5.</summary>
    public const double Mixing = 5;

    /// <summary>Time constant with which heated air falls toward the weather: 30 min.</summary>
    public static readonly Duration CoolsIn = Duration.FromMinutes(30);

    /// <summary>Batches that can be sprayed at once: 1.</summary>
    public const int SpraySpots = 1;

    /// <summary>Stations: 1.</summary>
    public const int Stations = 1;

    /// <summary>Old finish: unknown.</summary>
    public const string Finish = "unknown";

    /// <summary>Conditions: sound.</summary>
    public static readonly ImmutableArray<string> Conditions = ["sound"];

    /// <summary>Form: panel.</summary>
    public const string Form = "panel";

    /// <summary>Spread of an area given as a figure: 15 %.</summary>
    public static readonly Ratio SpreadOfFigure = Ratio.FromPercent(15);

    /// <summary>Spread of an area made of shapes: 5 %.</summary>
    public static readonly Ratio SpreadOfShape = Ratio.FromPercent(5);

    /// <summary>Angle of a bend: 90°.</summary>
    public static readonly Angle BendAngle = Angle.FromDegrees(90);

    /// <summary>Currency of prices: USD.</summary>
    public const string Currency = "USD";

    /// <summary>Air at which a label's times hold: 70 °F.</summary>
    public static readonly Temperature LabelAir = Temperature.FromDegreesFahrenheit(70);

    /// <summary>Relative humidity at which a label's times hold: 50 %.</summary>
    public static readonly Ratio LabelHumidity = Ratio.FromPercent(50);
}
