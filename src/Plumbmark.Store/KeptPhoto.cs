namespace Plumbmark.Store;

/// <summary>A picture kept with a car.</summary>
/// <param name="Name">Its name, from its content.</param>
/// <param name="ContentType">Such as <c>image/jpeg</c>.</param>
/// <param name="Bytes">The picture.</param>
public sealed record KeptPhoto(string Name, string ContentType, byte[] Bytes);
