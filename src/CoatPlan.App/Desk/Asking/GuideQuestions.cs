using CoatPlan.Presets;

namespace CoatPlan.App.Desk.Asking;

/// <summary>What the guide asks next, given what it knows: what it is for, what parts, what state, which cans, where, when.</summary>
internal static class GuideQuestions
{
    private const string Own = "my own vehicle";

    private const string Customer = "a customer";

    private const string ForClass = "a class";

    /// <summary>The next question; null where everything is known that a plan needs.</summary>
    /// <param name="draft">What is known.</param>
    /// <param name="catalogue">The presets.</param>
    /// <param name="start">When work could begin, to begin with.</param>
    public static GuideQuestion? Next(GuideDraft draft, Catalogue catalogue, LocalDateTime start) =>
        About(draft) ?? PartQuestions.Next(draft, catalogue) ?? CanQuestions.Next(draft, catalogue) ?? PlaceQuestions.Next(draft) ?? HourQuestions.Next(draft, start) ?? Price(draft);

    /// <summary>What was answered so far, a line each.</summary>
    /// <param name="draft">What is known.</param>
    public static ImmutableArray<string> Said(GuideDraft draft)
    {
        var said = ImmutableArray.CreateBuilder<string>();
        if (draft.Purpose is { } purpose)
            said.Add($"for: {(purpose == GuidePurpose.Own ? Own : purpose == GuidePurpose.Customer ? Customer : ForClass)}{(draft.Name is { } name ? $"; {name}" : "")}");
        foreach (var part in draft.Parts ?? [])
            said.Add(PartQuestions.Said(part));
        if (draft.Cans is { } cans)
            said.Add($"cans: {string.Join(", ", cans.Select(can => can.Key))}");
        if (draft.Outdoors is { } outdoors)
            said.Add(outdoors ? "where: outdoors" : $"where: indoors{(draft.Room is { } room ? $", {string.Join(" x ", room)}" : "")}");
        if (draft.WeatherSays is { } weather)
            said.Add($"air: {string.Join(", ", weather)}");
        if (draft.Start is { } start)
            said.Add($"from: {start}{(draft.Hours is { } hours ? $"; {string.Join("; ", hours.Select(entry => $"{entry.Days} {string.Join(", ", entry.Spans)}"))}" : "")}");
        return said.ToImmutable();
    }

    private static GuideQuestion? About(GuideDraft draft) => draft switch
    {
        { Purpose: null } => GuideQuestion.One("Whom is the job for?",
            [
                new PickerRow(Own, "some hours on some days, alone or with friends"),
                new PickerRow(Customer, "a shop: hours, cans and a price with its uncertainty"),
                new PickerRow(ForClass, "stations that each do their own pieces, in periods"),
            ],
            word => draft with
            {
                Purpose = word == Own ? GuidePurpose.Own : word == Customer ? GuidePurpose.Customer : GuidePurpose.Class,
                Stations = word == ForClass ? null : "1",
                Labour = word == Customer ? null : "",
                Markup = word == Customer ? null : "",
            }),
        { Name: null } => GuideQuestion.Line("What shall the job be called?", "Engine bay", typed => typed.Length == 0 ? null : draft with { Name = typed }) with { Expected = "a name, such as Engine bay" },
        { Units: null } => GuideQuestion.One("In which units shall the plan print? Either can be typed.",
            [new PickerRow("us", "feet, inches, fluid ounces, °F"), new PickerRow("metric", "metres, millilitres, °C")],
            word => draft with { Units = word }),
        _ => null,
    };

    private static GuideQuestion? Price(GuideDraft draft) => draft switch
    {
        { Labour: null } => GuideQuestion.Line("What does an hour of labour cost the customer?", "85 /h", typed => draft with { Labour = typed }),
        { Markup: null } => GuideQuestion.Line("Which share is added to the price of materials?", "25 %", typed => draft with { Markup = typed }) with { Explains = "Nothing: none. Tax, currency and prices of consumables are under fields, prices." },
        _ => null,
    };
}
