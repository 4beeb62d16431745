namespace CoatPlan.Prep;

/// <summary>Whether an operation is done once for the job or once for each batch of surfaces.</summary>
public enum OperationScope
{
    /// <summary>Once, for the vehicle or the bench as a whole.</summary>
    WholeJob,

    /// <summary>For the surfaces of one batch, so that it follows when the batch is split.</summary>
    SurfaceGroup,
}
