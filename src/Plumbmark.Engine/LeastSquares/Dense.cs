using System.Runtime.CompilerServices;
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

    /// <summary>Four sums at once, Σ aᵢ bᵢ with each of four rows of at least the length of <paramref name="a"/>, which is loaded once for all of them.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void DotFour(
        ReadOnlySpan<double> a,
        ReadOnlySpan<double> b0,
        ReadOnlySpan<double> b1,
        ReadOnlySpan<double> b2,
        ReadOnlySpan<double> b3,
        Span<double> sums
    )
    {
        var length = a.Length;
        b0 = b0[..length];
        b1 = b1[..length];
        b2 = b2[..length];
        b3 = b3[..length];
        ref var ra = ref MemoryMarshal.GetReference(a);
        ref var r0 = ref MemoryMarshal.GetReference(b0);
        ref var r1 = ref MemoryMarshal.GetReference(b1);
        ref var r2 = ref MemoryMarshal.GetReference(b2);
        ref var r3 = ref MemoryMarshal.GetReference(b3);
        var (sum0, sum1, sum2, sum3) = (Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero, Vector256<double>.Zero);
        var i = 0;
        for (; i <= length - 4; i += 4)
        {
            var x = Vector256.LoadUnsafe(ref ra, (nuint)i);
            sum0 += x * Vector256.LoadUnsafe(ref r0, (nuint)i);
            sum1 += x * Vector256.LoadUnsafe(ref r1, (nuint)i);
            sum2 += x * Vector256.LoadUnsafe(ref r2, (nuint)i);
            sum3 += x * Vector256.LoadUnsafe(ref r3, (nuint)i);
        }

        var (s0, s1, s2, s3) = (Vector256.Sum(sum0), Vector256.Sum(sum1), Vector256.Sum(sum2), Vector256.Sum(sum3));
        for (; i < length; i++)
        {
            s0 += a[i] * b0[i];
            s1 += a[i] * b1[i];
            s2 += a[i] * b2[i];
            s3 += a[i] * b3[i];
        }

        (sums[0], sums[1], sums[2], sums[3]) = (s0, s1, s2, s3);
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
