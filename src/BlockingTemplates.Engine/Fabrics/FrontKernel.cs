using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace BlockingTemplates.Engine.Fabrics;

/// <summary>Dense steps of a front, stored by columns with lengths in multiples of 4.</summary>
/// <remarks>Products are rounded before they are added, never fused with the sum: a processor that cannot fuse them, or a native build for any processor, comes to the same last digit.</remarks>
internal static class FrontKernel
{
    private const int Block = 32;

    /// <summary>A length rounded up to whole vectors.</summary>
    internal static int Padded(int length) => (length + 3) & ~3;

    /// <summary>Cholesky factor of the first columns of a front, in place, down to its last row.</summary>
    /// <param name="panel">The columns, each <paramref name="rows"/> long (a multiple of 4), padded to a multiple of 4 columns.</param>
    /// <param name="rows">Rows of the front, padding included.</param>
    /// <param name="pivots">Number of columns to eliminate.</param>
    /// <returns>False where a pivot is not above 0.</returns>
    internal static bool Factor(Span<double> panel, int rows, int pivots)
    {
        ref var a = ref MemoryMarshal.GetReference(panel);
        for (var from = 0; from < pivots; from += Block)
        {
            var to = Math.Min(from + Block, pivots);
            if (from > 0)
            {
                for (var j = from; j < to; j += 4)
                    Subtract(ref a, rows, j, j, from, ref Unsafe.Add(ref a, (nint)j * rows), rows, j, rows);
            }

            for (var j = from; j < to; j++)
            {
                ref var column = ref Unsafe.Add(ref a, (nint)j * rows);
                var first = j & ~3;
                var k = from;
                for (; k + 4 <= j; k += 4)
                    Subtract4(ref column, ref Unsafe.Add(ref a, (nint)k * rows), rows, j, first);
                for (; k < j; k++)
                    Subtract1(ref column, ref Unsafe.Add(ref a, (nint)k * rows), rows, j, first);
                var pivot = Unsafe.Add(ref column, j);
                if (!(pivot > 0) || double.IsInfinity(pivot))
                    return false;
                var scale = Vector256.Create(1 / Math.Sqrt(pivot));
                for (var i = first; i < rows; i += 4)
                    (Vector256.LoadUnsafe(ref column, (nuint)i) * scale).StoreUnsafe(ref column, (nuint)i);
            }
        }

        return true;
    }

    /// <summary>Takes the factored columns' part off the rest: rest -= L L' below the pivots, lower half.</summary>
    /// <param name="panel">The factored columns.</param>
    /// <param name="rows">Rows of the front, padding included.</param>
    /// <param name="pivots">Number of factored columns.</param>
    /// <param name="rest">The rest, by columns.</param>
    /// <param name="size">Rows and columns of the rest, a multiple of 4.</param>
    internal static void Reduce(Span<double> panel, int rows, int pivots, Span<double> rest, int size)
    {
        ref var a = ref MemoryMarshal.GetReference(panel);
        ref var c = ref MemoryMarshal.GetReference(rest);
        for (var j = 0; j < size; j += 4)
            Subtract(ref a, rows, pivots + j, pivots + j, pivots, ref Unsafe.Add(ref c, (nint)j * size), size, j, size);
    }

    /// <summary>Four columns of C, rows from <paramref name="cFrom"/> to <paramref name="cTo"/>, less A's rows times four of A's rows.</summary>
    private static void Subtract(ref double a, int lda, int aRow, int bRow, int depth, ref double c, int ldc, int cFrom, int cTo)
    {
        ref var b = ref Unsafe.Add(ref a, bRow);
        var i = cFrom;
        ref var at = ref Unsafe.Add(ref a, aRow - cFrom);
        for (; i + 12 <= cTo; i += 12)
            Tile12(ref Unsafe.Add(ref at, i), ref b, lda, depth, ref Unsafe.Add(ref c, i), ldc);
        for (; i < cTo; i += 4)
            Tile4(ref Unsafe.Add(ref at, i), ref b, lda, depth, ref Unsafe.Add(ref c, i), ldc);
    }

    private static void Tile12(ref double a, ref double b, int lda, int depth, ref double c, int ldc)
    {
        Vector256<double> c00 = default, c10 = default, c20 = default, c01 = default, c11 = default, c21 = default;
        Vector256<double> c02 = default, c12 = default, c22 = default, c03 = default, c13 = default, c23 = default;
        for (var k = 0; k < depth; k++)
        {
            var a0 = Vector256.LoadUnsafe(ref a);
            var a1 = Vector256.LoadUnsafe(ref a, 4);
            var a2 = Vector256.LoadUnsafe(ref a, 8);
            var b0 = Vector256.Create(b);
            c00 += a0 * b0;
            c10 += a1 * b0;
            c20 += a2 * b0;
            var b1 = Vector256.Create(Unsafe.Add(ref b, 1));
            c01 += a0 * b1;
            c11 += a1 * b1;
            c21 += a2 * b1;
            var b2 = Vector256.Create(Unsafe.Add(ref b, 2));
            c02 += a0 * b2;
            c12 += a1 * b2;
            c22 += a2 * b2;
            var b3 = Vector256.Create(Unsafe.Add(ref b, 3));
            c03 += a0 * b3;
            c13 += a1 * b3;
            c23 += a2 * b3;
            a = ref Unsafe.Add(ref a, lda);
            b = ref Unsafe.Add(ref b, lda);
        }

        TakeOff(ref c, c00, c10, c20);
        TakeOff(ref Unsafe.Add(ref c, ldc), c01, c11, c21);
        TakeOff(ref Unsafe.Add(ref c, 2 * ldc), c02, c12, c22);
        TakeOff(ref Unsafe.Add(ref c, 3 * ldc), c03, c13, c23);
    }

    private static void Tile4(ref double a, ref double b, int lda, int depth, ref double c, int ldc)
    {
        Vector256<double> c0 = default, c1 = default, c2 = default, c3 = default;
        for (var k = 0; k < depth; k++)
        {
            var a0 = Vector256.LoadUnsafe(ref a);
            c0 += a0 * Vector256.Create(b);
            c1 += a0 * Vector256.Create(Unsafe.Add(ref b, 1));
            c2 += a0 * Vector256.Create(Unsafe.Add(ref b, 2));
            c3 += a0 * Vector256.Create(Unsafe.Add(ref b, 3));
            a = ref Unsafe.Add(ref a, lda);
            b = ref Unsafe.Add(ref b, lda);
        }

        TakeOff(ref c, c0);
        TakeOff(ref Unsafe.Add(ref c, ldc), c1);
        TakeOff(ref Unsafe.Add(ref c, 2 * ldc), c2);
        TakeOff(ref Unsafe.Add(ref c, 3 * ldc), c3);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void TakeOff(ref double c, Vector256<double> product) =>
        (Vector256.LoadUnsafe(ref c) - product).StoreUnsafe(ref c);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void TakeOff(ref double c, Vector256<double> p0, Vector256<double> p1, Vector256<double> p2)
    {
        TakeOff(ref c, p0);
        TakeOff(ref Unsafe.Add(ref c, 4), p1);
        TakeOff(ref Unsafe.Add(ref c, 8), p2);
    }

    private static void Subtract4(ref double column, ref double a, int rows, int j, int first)
    {
        ref var a1 = ref Unsafe.Add(ref a, rows);
        ref var a2 = ref Unsafe.Add(ref a1, rows);
        ref var a3 = ref Unsafe.Add(ref a2, rows);
        var f0 = Vector256.Create(-Unsafe.Add(ref a, j));
        var f1 = Vector256.Create(-Unsafe.Add(ref a1, j));
        var f2 = Vector256.Create(-Unsafe.Add(ref a2, j));
        var f3 = Vector256.Create(-Unsafe.Add(ref a3, j));
        for (var i = first; i < rows; i += 4)
        {
            var sum = Vector256.LoadUnsafe(ref column, (nuint)i);
            sum += Vector256.LoadUnsafe(ref a, (nuint)i) * f0;
            sum += Vector256.LoadUnsafe(ref a1, (nuint)i) * f1;
            sum += Vector256.LoadUnsafe(ref a2, (nuint)i) * f2;
            sum += Vector256.LoadUnsafe(ref a3, (nuint)i) * f3;
            sum.StoreUnsafe(ref column, (nuint)i);
        }
    }

    private static void Subtract1(ref double column, ref double a, int rows, int j, int first)
    {
        var f = Vector256.Create(-Unsafe.Add(ref a, j));
        for (var i = first; i < rows; i += 4)
            ((Vector256.LoadUnsafe(ref a, (nuint)i) * f) + Vector256.LoadUnsafe(ref column, (nuint)i)).StoreUnsafe(ref column, (nuint)i);
    }
}
