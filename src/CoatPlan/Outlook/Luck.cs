using System.Globalization;
using CoatPlan.Paint;

namespace CoatPlan.Outlook;

/// <summary>What one draw of a chance brings: minutes of work and paces of drying, written into arrays that are used again for the next draw.</summary>
internal sealed class Luck
{
    private const int NoCause = -1;

    private readonly ChanceModel model;

    public Luck(ChanceModel model)
    {
        this.model = model;
        Work = new int[model.Work.Length];
        Paces = new byte[model.Work.Length];
    }

    /// <summary>For each activity its work, minutes.</summary>
    public int[] Work { get; }

    /// <summary>For each activity the pace at which what it leaves dries.</summary>
    public byte[] Paces { get; }

    /// <summary>Draws.</summary>
    /// <param name="draw">Number of the draw, from 0: the same number brings the same luck on every machine.</param>
    public void Draw(int draw) => Draw(draw, NoCause);

    /// <summary>Draws, but for what a cause is answerable for, which is left as it was planned.</summary>
    /// <param name="draw">Number of the draw, from 0: the same number brings the same luck on every machine.</param>
    /// <param name="asPlanned">The cause left as planned.</param>
    /// <returns>Whether that differs from the draw as it is.</returns>
    public bool Draw(int draw, int asPlanned)
    {
        var differs = false;
        var stream = new SeededDraws("chance", draw.ToString(CultureInfo.InvariantCulture));
        var pace = 1 + model.Spreads.Pace.DecimalFractions * stream.Around();
        for (var i = 0; i < Work.Length; i++)
        {
            // Each activity takes its number from the stream whatever is done with it, so that one cause more or less leaves the others their luck.
            var factor = pace * (1 + model.Spreads.Step.DecimalFractions * stream.Around());
            var drawn = model.Work[i] == 0 ? 0 : Math.Max(1, (int)Math.Round(model.Work[i] * factor));
            Work[i] = model.TaskOf[i] == asPlanned ? model.Work[i] : drawn;
            differs |= Work[i] != drawn;
        }

        for (var product = 0; product < model.Products; product++)
        {
            var slower = Math.Max(0, stream.Around());
            var level = (byte)Math.Round(slower * (model.Paces.Length - 1));
            var isAsPlanned = model.DryingOf[product] == asPlanned;
            differs |= isAsPlanned && level > 0;
            foreach (var i in model.OfProduct[product])
                Paces[i] = isAsPlanned ? (byte)0 : level;
        }

        return differs;
    }
}
