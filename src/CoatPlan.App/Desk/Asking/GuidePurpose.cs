namespace CoatPlan.App.Desk.Asking;

/// <summary>Whom a job is for; it decides what else is asked.</summary>
internal enum GuidePurpose
{
    /// <summary>A person's own parts.</summary>
    Own,

    /// <summary>A customer, who wants a price.</summary>
    Customer,

    /// <summary>A class at stations.</summary>
    Class,
}
