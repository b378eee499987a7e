namespace Plumbmark.Drawing.Floor;

/// <summary>What a page or a sheet asks of a drawing of the frame.</summary>
/// <param name="HrefOf">Where a tap on a point leads, from the point's name; null for a drawing that is only looked at.</param>
/// <param name="Picked">Points picked so far, such as the first end of a reading.</param>
/// <param name="Width">Width in picture units; 328 suits a phone of 360 px.</param>
/// <param name="TallestFrame">The most height given to the frame itself; a long frame is drawn narrower rather than taller.</param>
/// <param name="HasLegend">Whether the signs are explained below the drawing; the exaggeration is written there in any case.</param>
/// <param name="LeastRangeMetres">A deviation that must find room, in metres, so that two drawings side by side exaggerate alike; 0 for none.</param>
public sealed record FloorDrawingOptions(
    Func<string, string>? HrefOf = null,
    IReadOnlyList<string>? Picked = null,
    double Width = 328,
    double TallestFrame = 480,
    bool HasLegend = true,
    double LeastRangeMetres = 0
);
