namespace BlockingTemplates.Engine.Fabrics;

/// <summary>A symmetric 3 by 3 matrix between stresses (along, across, shear) and strains (along, across, engineering shear).</summary>
public readonly record struct PlaneStiffness(double C11, double C12, double C22, double C13, double C23, double C33)
{
    /// <summary>Determinant.</summary>
    public double Determinant =>
        (C11 * ((C22 * C33) - (C23 * C23))) - (C12 * ((C12 * C33) - (C23 * C13))) + (C13 * ((C12 * C23) - (C22 * C13)));

    /// <summary>The inverse (a compliance for a stiffness); throws where there is none.</summary>
    public PlaneStiffness Inverse()
    {
        var d = Determinant;
        if (d == 0 || !double.IsFinite(d))
            throw new InvalidOperationException("The matrix has no inverse.");
        return new(
            ((C22 * C33) - (C23 * C23)) / d,
            ((C13 * C23) - (C12 * C33)) / d,
            ((C11 * C33) - (C13 * C13)) / d,
            ((C12 * C23) - (C13 * C22)) / d,
            ((C12 * C13) - (C11 * C23)) / d,
            ((C11 * C22) - (C12 * C12)) / d);
    }

    /// <summary>All entries times a factor.</summary>
    public PlaneStiffness Times(double factor) => new(factor * C11, factor * C12, factor * C22, factor * C13, factor * C23, factor * C33);

    /// <summary>The product with (a, b, c).</summary>
    internal (double A, double B, double C) Times(double a, double b, double c) =>
        ((C11 * a) + (C12 * b) + (C13 * c), (C12 * a) + (C22 * b) + (C23 * c), (C13 * a) + (C23 * b) + (C33 * c));
}
