using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Plumbmark.Engine.LeastSquares;

/// <summary>The few vector operations all kernels are made of.</summary>
/// <remarks>
/// Four lanes and two accumulators, whatever the machine has, and no fused multiply-add: the same sums in the same order everywhere, so the
/// same file gives the same digits on every machine.
/// </remarks>
internal static class Dense
{
    /// <summary>Σ aᵢ bᵢ.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var length = Math.Min(a.Length, b.Length);
        ref var ra = ref MemoryMarshal.GetReference(a);
        ref var rb = ref MemoryMarshal.GetReference(b);
        var sum0 = Vector256<double>.Zero;
        var sum1 = Vector256<double>.Zero;
        var i = 0;
        for (; i <= length - 8; i += 8)
        {
            sum0 += Vector256.LoadUnsafe(ref ra, (nuint)i) * Vector256.LoadUnsafe(ref rb, (nuint)i);
            sum1 += Vector256.LoadUnsafe(ref ra, (nuint)i + 4) * Vector256.LoadUnsafe(ref rb, (nuint)i + 4);
        }

        var sum = Vector256.Sum(sum0 + sum1);
        for (; i < length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>y ← y + factor · x.</summary>
    public static void AddScaled(Span<double> y, double factor, ReadOnlySpan<double> x)
    {
        var length = Math.Min(y.Length, x.Length);
        ref var ry = ref MemoryMarshal.GetReference(y);
        ref var rx = ref MemoryMarshal.GetReference(x);
        var f = Vector256.Create(factor);
        var i = 0;
        for (; i <= length - 8; i += 8)
        {
            (Vector256.LoadUnsafe(ref ry, (nuint)i) + f * Vector256.LoadUnsafe(ref rx, (nuint)i)).StoreUnsafe(ref ry, (nuint)i);
            (Vector256.LoadUnsafe(ref ry, (nuint)i + 4) + f * Vector256.LoadUnsafe(ref rx, (nuint)i + 4)).StoreUnsafe(ref ry, (nuint)i + 4);
        }

        for (; i < length; i++)
        {
            y[i] += factor * x[i];
        }
    }

    /// <summary>Σ aᵢ².</summary>
    public static double SumOfSquares(ReadOnlySpan<double> a) => Dot(a, a);

    /// <summary>√Σ aᵢ².</summary>
    public static double Norm(ReadOnlySpan<double> a) => Math.Sqrt(Dot(a, a));

    /// <summary>Whether every entry is a finite number.</summary>
    public static bool IsFinite(ReadOnlySpan<double> a)
    {
        foreach (var value in a)
        {
            if (!double.IsFinite(value))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The power of two next to a positive number: scaling by it loses no digit.</summary>
    public static double PowerOfTwoNear(double value) => value > 0 && double.IsFinite(value) ? Math.ScaleB(1.0, Math.ILogB(value)) : 1.0;
}
