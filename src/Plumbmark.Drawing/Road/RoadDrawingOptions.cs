namespace Plumbmark.Drawing.Road;

/// <summary>What a page or a sheet asks of a drawing of the wheels.</summary>
/// <param name="Width">Width in picture units; 328 suits a phone of 360 px.</param>
/// <param name="HasLegend">Whether the lines are explained below the drawing; how much is exaggerated is written there in any case.</param>
public sealed record RoadDrawingOptions(double Width = 328, bool HasLegend = true);
