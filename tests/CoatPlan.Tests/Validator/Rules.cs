namespace CoatPlan.Tests.Validator;

/// <summary>The names of the rules that the validator knows, one for each way in which a plan can be wrong.</summary>
public static class Rules
{
    public const string Schema = "schema";
    public const string DuplicateId = "duplicate-id";
    public const string UnknownReference = "unknown-reference";
    public const string SurfaceMismatch = "surface-mismatch";
    public const string EndsBeforeStart = "ends-before-start";
    public const string WhyMissing = "why-missing";

    public const string BeforeStart = "before-start";
    public const string OutsideHours = "outside-hours";
    public const string HandsDoNotAddUp = "hands-do-not-add-up";
    public const string CoatAcrossBreak = "coat-across-break";
    public const string TooManyPeople = "too-many-people";
    public const string TooManySpots = "too-many-spots";
    public const string IdleDoesNotAddUp = "idle-does-not-add-up";
    public const string RestInHand = "rest-in-hand";
    public const string RackFull = "rack-full";

    public const string WaitedTooLittle = "waited-too-little";
    public const string WaitedTooLong = "waited-too-long";
    public const string LeastBelowLabel = "least-below-label";
    public const string LabelMismatch = "label-mismatch";

    public const string CoatsOutOfOrder = "coats-out-of-order";
    public const string TooFewCoats = "too-few-coats";
    public const string CoatMissing = "coat-missing";
    public const string WrongProduct = "wrong-product";
    public const string OutOfWindow = "out-of-window";
    public const string MistMismatch = "mist-mismatch";
    public const string LastSafeStart = "last-safe-start";

    public const string DustOverWetFilm = "dust-over-wet-film";
    public const string SprayOverWetFilm = "spray-over-wet-film";
    public const string DustDenied = "dust-denied";

    public const string MaskMissing = "mask-missing";
    public const string UnmaskTooEarly = "unmask-too-early";
    public const string TapeLeftOn = "tape-left-on";
    public const string TapeTooLong = "tape-too-long";
    public const string TapeOverWetFilm = "tape-over-wet-film";
    public const string FinalWipeMissing = "final-wipe-missing";
    public const string SolventCleanMissing = "solvent-clean-missing";
    public const string RefitTooEarly = "refit-too-early";
    public const string RefitMissing = "refit-missing";

    public const string AirLimit = "air-limit";
    public const string SurfaceLimit = "surface-limit";
    public const string HumidityLimit = "humidity-limit";
    public const string DewMargin = "dew-margin";
    public const string LimitsBeforeTouch = "limits-before-touch";
    public const string DewPointInconsistent = "dew-point-inconsistent";
    public const string WeatherMismatch = "weather-mismatch";
    public const string MetalMismatch = "metal-mismatch";
    public const string NightSpray = "night-spray";
    public const string WindOrRain = "wind-or-rain";

    public const string FinishNotLastEnd = "finish-not-last-end";
    public const string AfterFinishBy = "after-finish-by";
    public const string LowerBoundAfterFinish = "lower-bound-after-finish";
    public const string InServiceTooEarly = "in-service-too-early";

    public const string AreaCoats = "area-coats";
    public const string SupplyMissing = "supply-missing";
    public const string CansOrder = "cans-order";
    public const string CansBelowDemand = "cans-below-demand";
    public const string CansOverDemand = "cans-over-demand";
    public const string Buy = "buy";
    public const string Price = "price";

    public const string AirNumbers = "air-numbers";
    public const string AirStepMissing = "air-step-missing";
    public const string RespiratorMissing = "respirator-missing";
    public const string CautionMissing = "caution-missing";
    public const string QuoteSum = "quote-sum";
}
