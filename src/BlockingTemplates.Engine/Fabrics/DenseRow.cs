using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Sums over rows of numbers, four at a time on every processor, so that they come to the same last digit on each.</summary>
internal static class DenseRow
{
    /// <summary>target += factor times source; equal lengths.</summary>
    internal static void AddTimes(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        var wide = MemoryMarshal.Cast<double, Vector256<double>>(target);
        var from = MemoryMarshal.Cast<double, Vector256<double>>(source);
        for (var i = 0; i < wide.Length; i++)
            wide[i] += factor * from[i];
        for (var i = wide.Length * Vector256<double>.Count; i < target.Length; i++)
            target[i] += factor * source[i];
    }

    /// <summary>Scalar product; equal lengths.</summary>
    internal static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var wide = MemoryMarshal.Cast<double, Vector256<double>>(a);
        var other = MemoryMarshal.Cast<double, Vector256<double>>(b);
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < wide.Length; i++)
            sum += wide[i] * other[i];
        var total = (sum[0] + sum[1]) + (sum[2] + sum[3]);
        for (var i = wide.Length * Vector256<double>.Count; i < a.Length; i++)
            total += a[i] * b[i];
        return total;
    }
}
