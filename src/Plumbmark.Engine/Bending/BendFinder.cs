using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Plumbmark.Engine.Bending;

/// <summary>Places the bend of a part from readings along it.</summary>
/// <remarks>
/// <para>Assumes one bend in the plane of the readings. Model: height = offset + tilt·x − θ·B(x; c, w), with B of <see cref="Bend.UnitShape"/>: a kink
/// has w = 0, a sweep any w up to the length read. For every place c and length w the offset, tilt and angle are solved exactly (weighted least
/// squares); place and length are then averaged over a grid with the likelihood as weight and a flat prior, which gives their uncertainty without
/// linearising. The grid is laid again, finer, around what is still likely.</para>
/// <para>Straight, kink and sweep are compared by BIC = χ² + k·ln n with k = 2, 4, 5 (G. Schwarz, Ann. Statist. 6 (1978) 461-464).
/// Limit: two kinks in one plane are seen as a sweep, or as a large misfit.</para>
/// </remarks>
public static class BendFinder
{
    /// <summary>Fewest stations that can place a kink and still leave one reading over to check it.</summary>
    public const int FewestStations = 5;

    private const int PlaceSteps = 120;
    private const int LengthSteps = 30;
    private const int Rounds = 3;
    private const double LikelyDepth = 12; // a weight below e^−6 of the best adds nothing to an average
    private const double BentChiSquare = 11.8; // a straight part looks more bent than this once in 370 (3σ for two parameters)
    private const double CoverageFactor = 2; // 95 % of a normal distribution, for what would not show

    /// <summary>What readings along one line of a part say.</summary>
    public static BendFinding Find(IReadOnlyList<ProfileReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var stations = readings.Select(r => r.StationMetres).Distinct().Count();
        if (stations < FewestStations)
        {
            return new BendFinding.TooFew(stations, FewestStations);
        }

        var profile = new WeightedProfile(readings);
        var kink = Average(profile, 0, 0);
        var sweep = Average(profile, profile.Length / LengthSteps, profile.Length);
        var n = Math.Log(readings.Count);
        var (bicStraight, bicKink, bicSweep) = (
            profile.ChiSquareStraight + (2 * n),
            kink.BestChiSquare + (4 * n),
            sweep.BestChiSquare + (5 * n)
        );
        var gain = profile.ChiSquareStraight - Math.Min(kink.BestChiSquare, sweep.BestChiSquare);
        if (gain < BentChiSquare || bicStraight <= Math.Min(bicKink, bicSweep))
        {
            return new BendFinding.Straight(CoverageFactor * profile.AngleUncertainty(profile.Middle, 0));
        }

        var odds = Math.Exp(Math.Min(Math.Abs(bicSweep - bicKink), 600) / 2);
        return bicKink <= bicSweep
            ? new BendFinding.Kink(kink.Bend, odds, kink.BestChiSquare / Math.Max(1, readings.Count - 4))
            : new BendFinding.Sweep(sweep.Bend, odds, sweep.BestChiSquare / Math.Max(1, readings.Count - 5));
    }

    private static (Bend Bend, double BestChiSquare) Average(WeightedProfile profile, double shortest, double longest)
    {
        var (lowPlace, highPlace) = (profile.FirstInner, profile.LastInner);
        var (lowLength, highLength) = (shortest, longest);
        var trials = ImmutableArray<Trial>.Empty;
        for (var round = 0; round < Rounds; round++)
        {
            trials = Lay(profile, (lowPlace, highPlace), (lowLength, highLength));
            var best = trials.Min(t => t.ChiSquare);
            var likely = trials.Where(t => t.ChiSquare - best < LikelyDepth).ToList();
            var placeStep = (highPlace - lowPlace) / PlaceSteps;
            var lengthStep = (highLength - lowLength) / LengthSteps;
            (lowPlace, highPlace) = (
                Math.Max(profile.FirstInner, likely.Min(t => t.Place) - placeStep),
                Math.Min(profile.LastInner, likely.Max(t => t.Place) + placeStep)
            );
            (lowLength, highLength) = (
                Math.Max(shortest, likely.Min(t => t.Length) - lengthStep),
                Math.Min(longest, likely.Max(t => t.Length) + lengthStep)
            );
        }

        return Summarise(trials);
    }

    private static ImmutableArray<Trial> Lay(WeightedProfile profile, (double Low, double High) places, (double Low, double High) lengths)
    {
        var count = lengths.High > lengths.Low ? LengthSteps : 0;
        var trials = ImmutableArray.CreateBuilder<Trial>((PlaceSteps + 1) * (count + 1));
        for (var j = 0; j <= count; j++)
        {
            var length = lengths.Low + (count == 0 ? 0 : (lengths.High - lengths.Low) * j / count);
            for (var i = 0; i <= PlaceSteps; i++)
            {
                var place = places.Low + ((places.High - places.Low) * i / PlaceSteps);
                if (profile.Holds(place, length))
                {
                    trials.Add(profile.Try(place, length));
                }
            }
        }

        // A long sweep may leave no place on this grid but the one that centres it.
        if (trials.Count == 0)
        {
            trials.Add(profile.Try(profile.Middle, Math.Min(lengths.High, profile.Length)));
        }

        return trials.DrainToImmutable();
    }

    private static (Bend Bend, double BestChiSquare) Summarise(ImmutableArray<Trial> trials)
    {
        var best = trials.Min(t => t.ChiSquare);
        double total = 0,
            place = 0,
            angle = 0,
            length = 0;
        foreach (var t in trials)
        {
            var weight = Math.Exp((best - t.ChiSquare) / 2);
            total += weight;
            place += weight * t.Place;
            angle += weight * t.Angle;
            length += weight * t.Length;
        }

        (place, angle, length) = (place / total, angle / total, length / total);
        double varPlace = 0,
            varAngle = 0,
            varLength = 0;
        foreach (var t in trials)
        {
            var weight = Math.Exp((best - t.ChiSquare) / 2) / total;
            varPlace += weight * (t.Place - place) * (t.Place - place);
            varAngle += weight * (((t.Angle - angle) * (t.Angle - angle)) + t.AngleVariance);
            varLength += weight * (t.Length - length) * (t.Length - length);
        }

        return (new Bend(place, Math.Sqrt(varPlace), angle, Math.Sqrt(varAngle), length, Math.Sqrt(varLength)), best);
    }

    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Trial(double Place, double Length, double Angle, double AngleVariance, double ChiSquare);

    /// <summary>The readings with their straight line taken out, ready to try bends on.</summary>
    private sealed class WeightedProfile
    {
        private readonly double[] _station;
        private readonly double[] _root; // √weight = 1/u
        private readonly double[] _line0; // weighted constant, unit length
        private readonly double[] _line1; // weighted tilt, orthogonal to it, unit length
        private readonly double[] _rest; // weighted heights without constant and tilt
        private readonly double[] _shape;

        public WeightedProfile(IReadOnlyList<ProfileReading> readings)
        {
            var sorted = readings.OrderBy(r => r.StationMetres).ToArray();
            _station = [.. sorted.Select(r => r.StationMetres)];
            _root = [.. sorted.Select(r => 1 / r.StandardUncertaintyMetres)];
            _shape = new double[sorted.Length];
            _line0 = [.. _root];
            Normalise(_line0);
            _line1 = [.. _station.Select((x, i) => _root[i] * (x - _station[0]))];
            RemoveAlong(_line1, _line0);
            Normalise(_line1);
            _rest = [.. sorted.Select((r, i) => _root[i] * r.HeightMetres)];
            TakeLineOut(_rest);
            ChiSquareStraight = Dot(_rest, _rest);
            var distinct = _station.Distinct().ToArray();
            (FirstInner, LastInner) = (distinct[1], distinct[^2]);
        }

        public double ChiSquareStraight { get; }

        public double FirstInner { get; }

        public double LastInner { get; }

        public double Length => _station[^1] - _station[0];

        public double Middle => (_station[^1] + _station[0]) / 2;

        // A bend must lie within the readings (a hair over is rounding), or part of its angle would be invented.
        public bool Holds(double place, double length) =>
            place - (length / 2) >= _station[0] - (1e-9 * Length) && place + (length / 2) <= _station[^1] + (1e-9 * Length);

        public Trial Try(double place, double length)
        {
            SetShape(place, length);
            var size = Dot(_shape, _shape);
            var angle = Dot(_rest, _shape) / size;
            return new(place, length, angle, 1 / size, Math.Max(0, ChiSquareStraight - (angle * angle * size)));
        }

        public double AngleUncertainty(double place, double length)
        {
            SetShape(place, length);
            return 1 / Math.Sqrt(Dot(_shape, _shape));
        }

        private void SetShape(double place, double length)
        {
            for (var i = 0; i < _shape.Length; i++)
            {
                _shape[i] = -_root[i] * Bend.UnitShape(_station[i] - place, length);
            }

            TakeLineOut(_shape);
        }

        private void TakeLineOut(double[] vector)
        {
            RemoveAlong(vector, _line0);
            RemoveAlong(vector, _line1);
        }

        private static void RemoveAlong(double[] vector, double[] unit)
        {
            var along = Dot(vector, unit);
            for (var i = 0; i < vector.Length; i++)
            {
                vector[i] -= along * unit[i];
            }
        }

        private static void Normalise(double[] vector)
        {
            var size = Math.Sqrt(Dot(vector, vector));
            for (var i = 0; i < vector.Length; i++)
            {
                vector[i] /= size;
            }
        }

        private static double Dot(double[] a, double[] b)
        {
            double sum = 0;
            for (var i = 0; i < a.Length; i++)
            {
                sum += a[i] * b[i];
            }

            return sum;
        }
    }
}
