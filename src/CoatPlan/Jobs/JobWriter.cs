using System.Globalization;
using CoatPlan.Jobs.Editing;
using NodaTime.Text;

namespace CoatPlan.Jobs;

/// <summary>Writes the text of a new job: short, commented, and complete enough to plan as it stands.</summary>
public static class JobWriter
{
    private static readonly LocalDateTimePattern TimePattern = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm");

    /// <summary>The text of a new job.</summary>
    /// <param name="answers">What is known of it.</param>
    /// <returns>YAML with LF line ends; the figures in it are an example to be changed.</returns>
    /// <exception cref="ArgumentException">The name is blank, or a count is out of its range.</exception>
    public static string New(JobAnswers answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        ArgumentException.ThrowIfNullOrWhiteSpace(answers.Name, nameof(answers));
        if (!JobRanges.People.Hold(answers.People)) throw new ArgumentException($"People: {answers.People}, not {JobRanges.People}.", nameof(answers));
        if (!JobRanges.Stations.Hold(answers.Stations)) throw new ArgumentException($"Stations: {answers.Stations}, not {JobRanges.Stations}.", nameof(answers));
        bool metric = answers.Units == PrintUnits.Metric;
        string name = new ValueWriter(isJson: false).InLine(JobValue.Of(answers.Name.Trim()), isInFlow: false);
        string room = metric ? "room: {length: 6.5 m, width: 6 m, height: 2.7 m}" : "room: {length: 22 ft, width: 20 ft, height: 9 ft}";
        string exhaust = metric ? "20 m3/min" : "800 ft3/min";
        string weather = metric ? "{low: 12 °C, high: 23 °C, dew-point: 8 °C}" : "{low: 54 °F, high: 74 °F, dew-point: 46 °F}";
        return string.Join('\n',
        [
            "# A refinishing job. Change every figure to your own; the label and the safety data sheet of the can in hand",
            "# win over all that stands here. `coatplan check` says what is wrong in this file.",
            "coatplan: 1",
            $"job: {name}",
            .. metric ? ["units: metric"] : Array.Empty<string>(),
            $"start: {TimePattern.Format(answers.Start)}          # nothing is planned before it",
            $"# finish-by: {TimePattern.Format(answers.Start.PlusDays(2))}    # when everything must be back together",
            "",
            "place:",
            answers.Outdoors ? "  outdoors: true" : $"  {room}",
            .. answers.Outdoors ? Array.Empty<string>() : [$"  # exhaust: {exhaust}           # a fan that blows outdoors while vapour is present"],
            "  # ignition: [gas water heater]    # whatever could light vapour",
            "  weather:                          # from a forecast",
            $"    daily: {weather}",
            "",
            "crew:",
            $"  people: {answers.People.ToString(CultureInfo.InvariantCulture)}",
            .. answers.Stations == 1 ? Array.Empty<string>() : [$"  stations: {answers.Stations.ToString(CultureInfo.InvariantCulture)}"],
            "  hours:",
            "    Mon-Fri: 17:00-21:00",
            "    Sat-Sun: [08:00-12:00, 13:00-18:00]",
            "",
            "products:                           # what the label says beats what the preset fills in",
            "  primer: {preset: etch-primer-aerosol}",
            "  black:",
            "    preset: underhood-black-aerosol",
            "    # covers: " + (metric ? "1.2 m2" : "13 ft2") + "                  # one can, one coat",
            "    # recoat: [10 min-1 h, after 24 h]",
            "",
            "systems:                            # layers, first to last",
            "  over-paint: [{product: primer, only: bare}, {product: black, coats: 3}]",
            "  on-metal: [{product: primer}, {product: black, coats: 3}]",
            "",
            "surfaces:",
            "  - name: Inner fender",
            "    material: steel",
            "    finish: factory paint",
            "    condition: [oily, chips]",
            "    area: " + (metric ? "0.75 m2" : "8 ft2"),
            "    stays: true                     # on the vehicle; otherwise it is removed and refitted",
            "    system: over-paint",
            "  - name: Bracket",
            "    material: steel",
            "    finish: bare",
            "    condition: [light rust]",
            "    shape: [{panel: " + (metric ? "{length: 300 mm, width: 200 mm, sides: 2}" : "{length: 12 in, width: 8 in, sides: 2}") + "}]",
            "    form: bracket",
            "    system: on-metal",
            "",
        ]);
    }
}
