namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A symmetric plane tensor (strain or stress) in the cloth's own axes.</summary>
/// <param name="Along">Component along the rows.</param>
/// <param name="Across">Component across the rows.</param>
/// <param name="Shear">Component along-across; for a strain the tensor's own (half the engineering shear).</param>
public readonly record struct PlaneTensor(double Along, double Across, double Shear)
{
    /// <summary>Sum of the components on the diagonal.</summary>
    public double Trace => Along + Across;

    /// <summary>Determinant.</summary>
    public double Determinant => (Along * Across) - (Shear * Shear);
}
