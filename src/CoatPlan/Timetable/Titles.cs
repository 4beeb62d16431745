using System.Globalization;

namespace CoatPlan.Timetable;

/// <summary>What steps are called.</summary>
internal static class Titles
{
    /// <summary>The title of a step.</summary>
    public static string Of(WorkNode node) => node.Operation?.Title ?? Of(node.Coat!);

    /// <summary>The title of a coat's step.</summary>
    public static string Of(CoatTask coat) =>
        coat.Mist
            ? $"{coat.Label.Name}: mist coat"
            : string.Create(CultureInfo.InvariantCulture, $"{coat.Label.Name}: coat {coat.Coat} of {coat.Of}");

    /// <summary>Why a coat is put on.</summary>
    public static string WhyCoat(CoatTask coat) =>
        coat.Mist
            ? $"A mist coat first gives the coats over it something to hold to; the system asks for one of {coat.Label.Name}."
            : string.Create(CultureInfo.InvariantCulture, $"Layer {coat.Layer} of the system: {coat.Label.Name}, {coat.Of} {(coat.Of == 1 ? "coat" : "coats")}.");
}
