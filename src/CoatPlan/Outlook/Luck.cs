using System.Globalization;
using CoatPlan.Paint;

namespace CoatPlan.Outlook;

/// <summary>What one draw of a chance brings: minutes of work and paces of drying, written into arrays that are used again for the next draw.</summary>
internal sealed class Luck
{
    private readonly ChanceModel model;
    private readonly double paceSpread;
    private readonly double stepSpread;
    private readonly double[] numbers;
    private readonly int[] drawnWork;
    private readonly byte[] drawnPaces;

    public Luck(ChanceModel model)
    {
        this.model = model;
        (paceSpread, stepSpread) = (model.Spreads.Pace.DecimalFractions, model.Spreads.Step.DecimalFractions);
        numbers = new double[model.Work.Length];
        drawnWork = new int[model.Work.Length];
        drawnPaces = new byte[model.Work.Length];
        Work = new int[model.Work.Length];
        Paces = new byte[model.Work.Length];
    }

    /// <summary>For each activity its work, minutes.</summary>
    public int[] Work { get; }

    /// <summary>For each activity the pace at which what it leaves dries.</summary>
    public byte[] Paces { get; }

    /// <summary>Draws.</summary>
    /// <param name="draw">Number of the draw, from 0: the same number brings the same luck on every machine.</param>
    public void Draw(int draw)
    {
        var stream = new SeededDraws("chance", draw.ToString(CultureInfo.InvariantCulture));
        var pace = 1 + paceSpread * stream.Around();
        stream.Around(numbers);
        for (var i = 0; i < numbers.Length; i++)
            drawnWork[i] = model.Work[i] == 0 ? 0 : Math.Max(1, (int)Math.Round(model.Work[i] * (pace * (1 + stepSpread * numbers[i]))));

        for (var product = 0; product < model.Products; product++)
        {
            var level = (byte)Math.Round(Math.Max(0, stream.Around()) * (model.Paces.Length - 1));
            foreach (var i in model.OfProduct[product])
                drawnPaces[i] = level;
        }

        TakeDrawn();
    }

    /// <summary>The draw as it is, but for what a cause is answerable for, which is left as it was planned.</summary>
    /// <param name="cause">The cause, a task's or a product's.</param>
    /// <returns>Whether that differs from the draw as it is.</returns>
    public bool LeaveAsPlanned(int cause)
    {
        TakeDrawn();
        var differs = false;
        foreach (var i in model.OfTask[cause])
        {
            differs |= Work[i] != model.Work[i];
            Work[i] = model.Work[i];
        }

        foreach (var i in model.OfDrying[cause])
        {
            differs |= Paces[i] > 0;
            Paces[i] = 0;
        }

        return differs;
    }

    private void TakeDrawn()
    {
        drawnWork.CopyTo(Work, 0);
        drawnPaces.CopyTo(Paces, 0);
    }
}
