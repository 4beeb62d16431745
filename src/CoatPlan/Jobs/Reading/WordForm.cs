namespace CoatPlan.Jobs.Reading;

/// <summary>One of the words of the contract or of a folder of presets.</summary>
internal sealed record WordForm(string What, Func<Vocabulary, ImmutableArray<string>> Words) : Form
{
    /// <inheritdoc/>
    public override string Example => Words(Vocabulary.Contract)[0];
}
