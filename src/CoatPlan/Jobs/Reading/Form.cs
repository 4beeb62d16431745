namespace CoatPlan.Jobs.Reading;

/// <summary>What a value of the job file must look like; the schema is written from it.</summary>
internal abstract record Form
{
    private protected Form()
    {
    }

    /// <summary>An example, as it is written in the file; empty: a map or a list.</summary>
    public virtual string Example => "";
}
