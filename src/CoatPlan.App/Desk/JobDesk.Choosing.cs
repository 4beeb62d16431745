namespace CoatPlan.App.Desk;

/// <content>What is chosen with a mouse.</content>
internal sealed partial class JobDesk
{
    /// <summary>Chooses a surface and a column, as with a mouse.</summary>
    /// <param name="surface">The surface, from 0.</param>
    /// <param name="column">The column.</param>
    public void Choose(int surface, SurfaceColumn column)
    {
        (SurfaceAt, ColumnAt) = (surface, column);
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Chooses a step, as with a mouse.</summary>
    /// <param name="step">The step, from 0.</param>
    public void ChooseStep(int step)
    {
        StepAt = step;
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Chooses a row of the supplies, as with a mouse.</summary>
    /// <param name="row">The row, cans first, from 0.</param>
    public void ChooseSupply(int row)
    {
        SupplyAt = row;
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Chooses a field, as with a mouse.</summary>
    /// <param name="row">Its row, from 0.</param>
    public void ChooseField(int row)
    {
        fields.At = row;
        KeepInside();
        Changed?.Invoke();
    }

    /// <summary>Chooses a sheet, as with a mouse.</summary>
    /// <param name="sheet">The sheet, from 0.</param>
    public void ChooseSheet(int sheet)
    {
        (SheetAt, ReadFrom) = (sheet, 0);
        KeepInside();
        Changed?.Invoke();
    }
}
