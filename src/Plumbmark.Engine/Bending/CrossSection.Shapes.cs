using System.Collections.Immutable;

namespace Plumbmark.Engine.Bending;

/// <content>The shapes by name. Every size is in metres and must be positive; walls must leave a hollow between them.</content>
public sealed partial class CrossSection
{
    /// <summary>A solid flat or square bar.</summary>
    public static CrossSection Rectangle(double widthMetres, double depthMetres)
    {
        RequirePositive(widthMetres, depthMetres);
        return new("rectangle", [Plate(0, depthMetres, widthMetres)], []);
    }

    /// <summary>A solid round bar.</summary>
    public static CrossSection Round(double diameterMetres)
    {
        RequirePositive(diameterMetres);
        var radius = diameterMetres / 2;
        return new("round", [new SectionPiece.Disc(radius, radius, 1)], []);
    }

    /// <summary>A round tube.</summary>
    public static CrossSection Tube(double outsideDiameterMetres, double wallMetres)
    {
        RequirePositive(outsideDiameterMetres, wallMetres);
        RequireHollow(outsideDiameterMetres, 2 * wallMetres);
        var radius = outsideDiameterMetres / 2;
        return new(
            "tube",
            [new SectionPiece.Disc(radius, radius, 1), new SectionPiece.Disc(radius, radius - wallMetres, -1)],
            [new("tube wall", outsideDiameterMetres, wallMetres, PlateSupport.TubeWall)]
        );
    }

    /// <summary>A rectangular box with equal walls.</summary>
    public static CrossSection Box(double widthMetres, double depthMetres, double wallMetres)
    {
        RequirePositive(widthMetres, depthMetres, wallMetres);
        RequireHollow(Math.Min(widthMetres, depthMetres), 2 * wallMetres);
        return new(
            "box",
            [
                Plate(0, wallMetres, widthMetres),
                Plate(wallMetres, depthMetres - wallMetres, 2 * wallMetres),
                Plate(depthMetres - wallMetres, depthMetres, widthMetres),
            ],
            [
                new("ram-side face", widthMetres - (2 * wallMetres), wallMetres, PlateSupport.HeldBothEdges),
                new("side walls", depthMetres - (2 * wallMetres), wallMetres, PlateSupport.Web),
            ]
        );
    }

    /// <summary>A symmetric I: a web between two equal flanges, bent in the plane of the web.</summary>
    public static CrossSection I(double flangeWidthMetres, double depthMetres, double webMetres, double flangeMetres)
    {
        RequirePositive(flangeWidthMetres, depthMetres, webMetres, flangeMetres);
        RequireHollow(depthMetres, 2 * flangeMetres);
        RequireHollow(flangeWidthMetres, webMetres);
        return new(
            "I",
            FlangesAndWeb(flangeWidthMetres, depthMetres, webMetres, flangeMetres),
            [
                new("ram-side flange", (flangeWidthMetres - webMetres) / 2, flangeMetres, PlateSupport.OneEdgeFree),
                new("web", depthMetres - (2 * flangeMetres), webMetres, PlateSupport.Web),
            ]
        );
    }

    /// <summary>A channel with its web standing, bent in the plane of the web.</summary>
    public static CrossSection Channel(double flangeWidthMetres, double depthMetres, double webMetres, double flangeMetres)
    {
        RequirePositive(flangeWidthMetres, depthMetres, webMetres, flangeMetres);
        RequireHollow(depthMetres, 2 * flangeMetres);
        RequireHollow(flangeWidthMetres, webMetres);
        return new(
            "channel",
            FlangesAndWeb(flangeWidthMetres, depthMetres, webMetres, flangeMetres),
            [
                new("ram-side flange", flangeWidthMetres - webMetres, flangeMetres, PlateSupport.OneEdgeFree),
                new("web", depthMetres - (2 * flangeMetres), webMetres, PlateSupport.Web),
            ]
        );
    }

    /// <summary>A channel lying down: the web under the ram and the legs pointing away, or the legs pointing at the ram.</summary>
    public static CrossSection LyingChannel(double webWidthMetres, double depthMetres, double webMetres, double legMetres, bool legsAtRam)
    {
        RequirePositive(webWidthMetres, depthMetres, webMetres, legMetres);
        RequireHollow(webWidthMetres, 2 * legMetres);
        RequireHollow(depthMetres, webMetres);
        var clear = webWidthMetres - (2 * legMetres);
        var leg = depthMetres - webMetres;
        return legsAtRam
            ? new(
                "channel, legs at the ram",
                [Plate(0, webMetres, webWidthMetres), Plate(webMetres, depthMetres, 2 * legMetres)],
                [new("legs", leg, legMetres, PlateSupport.FreeEdgeSqueezedMost)]
            )
            : new(
                "channel, web at the ram",
                [Plate(0, leg, 2 * legMetres), Plate(leg, depthMetres, webWidthMetres)],
                [new("ram-side web", clear, webMetres, PlateSupport.HeldBothEdges), new("legs", leg, legMetres, PlateSupport.Web)]
            );
    }

    /// <summary>A pressed hat of one gauge: a crown under the ram, two legs, and two feet turned outwards.</summary>
    /// <param name="crownMetres">Width over the crown, m.</param>
    /// <param name="depthMetres">Depth, m.</param>
    /// <param name="footMetres">Width of each foot beyond its leg, m.</param>
    /// <param name="gaugeMetres">Thickness of the sheet, m.</param>
    public static CrossSection Hat(double crownMetres, double depthMetres, double footMetres, double gaugeMetres)
    {
        RequirePositive(crownMetres, depthMetres, footMetres, gaugeMetres);
        RequireHollow(crownMetres, 2 * gaugeMetres);
        RequireHollow(depthMetres, 2 * gaugeMetres);
        return new(
            "hat",
            [
                Plate(0, gaugeMetres, 2 * (footMetres + gaugeMetres)),
                Plate(gaugeMetres, depthMetres - gaugeMetres, 2 * gaugeMetres),
                Plate(depthMetres - gaugeMetres, depthMetres, crownMetres),
            ],
            [
                new("crown", crownMetres - (2 * gaugeMetres), gaugeMetres, PlateSupport.HeldBothEdges),
                new("legs", depthMetres - (2 * gaugeMetres), gaugeMetres, PlateSupport.Web),
            ]
        );
    }

    /// <summary>Any section with a vertical middle line, as strips with straight sides; they may touch but not overlap.</summary>
    public static CrossSection OfStrips(ImmutableArray<SectionPiece.Strip> strips, ImmutableArray<PlateElement> plates = default)
    {
        if (strips.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A section needs at least one strip.", nameof(strips));
        }

        foreach (var strip in strips)
        {
            RequireHollow(strip.Top, strip.Bottom);
            if (!(strip.BottomWidth >= 0 && strip.TopWidth >= 0 && strip.BottomWidth + strip.TopWidth > 0))
            {
                throw new ArgumentException("A strip's widths must be positive.", nameof(strips));
            }
        }

        return new("strips", [.. strips], plates.IsDefault ? [] : plates);
    }

    private static SectionPiece.Strip Plate(double bottom, double top, double width) => new(bottom, top, width, width);

    private static ImmutableArray<SectionPiece> FlangesAndWeb(double width, double depth, double web, double flange) =>
        [Plate(0, flange, width), Plate(flange, depth - flange, web), Plate(depth - flange, depth, width)];

    private static void RequirePositive(params ReadOnlySpan<double> metres)
    {
        foreach (var value in metres)
        {
            if (!(value > 0 && double.IsFinite(value)))
            {
                throw new ArgumentOutOfRangeException(nameof(metres), value, "Every size of a section must be positive.");
            }
        }
    }

    private static void RequireHollow(double outsideMetres, double wallsMetres)
    {
        if (!(outsideMetres > wallsMetres))
        {
            throw new ArgumentOutOfRangeException(nameof(wallsMetres), wallsMetres, "The walls leave no hollow.");
        }
    }
}
