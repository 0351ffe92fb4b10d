using System.Numerics;
using System.Runtime.InteropServices;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Sums over rows of numbers, several at a time.</summary>
internal static class DenseRow
{
    /// <summary>target += factor times source; equal lengths.</summary>
    internal static void AddTimes(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        var wide = MemoryMarshal.Cast<double, Vector<double>>(target);
        var from = MemoryMarshal.Cast<double, Vector<double>>(source);
        for (var i = 0; i < wide.Length; i++)
            wide[i] += factor * from[i];
        for (var i = wide.Length * Vector<double>.Count; i < target.Length; i++)
            target[i] += factor * source[i];
    }

    /// <summary>Scalar product; equal lengths.</summary>
    internal static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var wide = MemoryMarshal.Cast<double, Vector<double>>(a);
        var other = MemoryMarshal.Cast<double, Vector<double>>(b);
        var sum = Vector<double>.Zero;
        for (var i = 0; i < wide.Length; i++)
            sum += wide[i] * other[i];
        var total = Vector.Sum(sum);
        for (var i = wide.Length * Vector<double>.Count; i < a.Length; i++)
            total += a[i] * b[i];
        return total;
    }
}
