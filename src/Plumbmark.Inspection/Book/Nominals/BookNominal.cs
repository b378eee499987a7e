using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Book.Nominals;

/// <summary>Where the book puts a point, worked out from its figures. Not where the point was found: that is a reading's business.</summary>
/// <param name="Point">The point.</param>
/// <param name="Place">Its coordinates in the book's own zero; a coordinate that the figures do not give is null.</param>
/// <param name="Source">Title, edition, page and figures it follows from; told as <c>no source</c> where the page has none.</param>
/// <param name="LargestSigmaMetres">Standard uncertainty of its least certain coordinate from rounding alone, metres; null when none is known.</param>
public sealed record BookNominal(string Point, Place Place, string Source, double? LargestSigmaMetres);
