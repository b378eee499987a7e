namespace Plumbmark.Drawing.Floor;

/// <summary>What says where a point is drawn. Only the first is evidence.</summary>
internal enum PlaceSource
{
    /// <summary>The readings.</summary>
    Measured,

    /// <summary>The owner's sketch, laid on the measured points as well as it goes.</summary>
    Sketch,

    /// <summary>The book's figures.</summary>
    Book,

    /// <summary>Nothing: it stands behind the rest in the order of the list.</summary>
    Listed,
}
