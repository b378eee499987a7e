using System.Collections.Immutable;

namespace Plumbmark.Engine.Bending;

/// <summary>A section of a bar, as it stands under the ram: up is towards the ram, so the top is squeezed when the ram comes down.</summary>
/// <remarks>Built up of <see cref="SectionPiece"/>s, whose moments below any height are exact; corner radii are left out.</remarks>
public sealed partial class CrossSection
{
    private const int BisectionSteps = 200; // halving a height of metres 200 times ends at the spacing of doubles

    private readonly ImmutableArray<SectionPiece> _pieces;

    private CrossSection(string shape, ImmutableArray<SectionPiece> pieces, ImmutableArray<PlateElement> plates)
    {
        Shape = shape;
        _pieces = pieces;
        Plates = plates;
        BottomMetres = pieces.Min(p => p.BottomMetres);
        TopMetres = pieces.Max(p => p.TopMetres);
        var whole = Below(TopMetres);
        AreaSquareMetres = whole.Area;
        CentroidMetres = whole.First / whole.Area;
        SecondMomentQuarticMetres = whole.AboutLineHigherBy(CentroidMetres).Second;
        ElasticModulusCubicMetres = SecondMomentQuarticMetres / Math.Max(TopMetres - CentroidMetres, CentroidMetres - BottomMetres);
        EqualAreaMetres = FindEqualArea();
        var lower = Below(EqualAreaMetres).AboutLineHigherBy(EqualAreaMetres);
        PlasticModulusCubicMetres = whole.AboutLineHigherBy(EqualAreaMetres).First - (2 * lower.First);
    }

    /// <summary>The trade name of the shape: rectangle, round, tube, channel, I, box, hat, strips.</summary>
    public string Shape { get; }

    /// <summary>The walls that may buckle, those nearest the ram first; empty for a solid bar.</summary>
    public ImmutableArray<PlateElement> Plates { get; }

    /// <summary>Height of the lowest fibre, m.</summary>
    public double BottomMetres { get; }

    /// <summary>Height of the fibre nearest the ram, m.</summary>
    public double TopMetres { get; }

    /// <summary>Depth in the direction of the ram, m.</summary>
    public double DepthMetres => TopMetres - BottomMetres;

    /// <summary>Area A, m².</summary>
    public double AreaSquareMetres { get; }

    /// <summary>Height of the centroid, m: the neutral axis while the bar is elastic.</summary>
    public double CentroidMetres { get; }

    /// <summary>Height of the line that halves the area, m: the neutral axis of the fully plastic, unhardened section.</summary>
    public double EqualAreaMetres { get; }

    /// <summary>Second moment I about the centroid, m⁴.</summary>
    public double SecondMomentQuarticMetres { get; }

    /// <summary>Elastic section modulus of the outermost fibre, W = I / c, m³.</summary>
    public double ElasticModulusCubicMetres { get; }

    /// <summary>Plastic section modulus Z = ∫ |y − y_equal-area| dA, m³.</summary>
    public double PlasticModulusCubicMetres { get; }

    /// <summary>Z / W: how much more moment the whole section takes than its first yield.</summary>
    public double ShapeFactor => PlasticModulusCubicMetres / ElasticModulusCubicMetres;

    /// <summary>Whether the inside can be filled or the open side packed, so that the ram does not crush a wall.</summary>
    public bool HasWalls => !Plates.IsEmpty;

    /// <summary>The moments of what lies below a height, about the section's datum line.</summary>
    public AreaMoments Below(double heightMetres)
    {
        var sum = default(AreaMoments);
        foreach (var piece in _pieces)
        {
            sum += piece.Below(heightMetres);
        }

        return sum;
    }

    private double FindEqualArea()
    {
        var (low, high) = (BottomMetres, TopMetres);
        for (var i = 0; i < BisectionSteps && high > low; i++)
        {
            var middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                break;
            }

            (low, high) = Below(middle).Area < AreaSquareMetres / 2 ? (middle, high) : (low, middle);
        }

        return low + ((high - low) / 2);
    }
}
