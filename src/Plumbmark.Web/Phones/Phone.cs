namespace Plumbmark.Web.Phones;

/// <summary>A phone, tablet or other machine on the home network that has been let in.</summary>
/// <param name="Id">Its name in cookies and addresses; no secret.</param>
/// <param name="Name">What its owner calls it.</param>
/// <param name="Hash">SHA-256 of its secret, in hexadecimal. The secret itself is only on the phone: 256 random bits, so that no salt or slow hash is needed.</param>
/// <param name="Since">When it was let in.</param>
/// <param name="Seen">When it was last here, to about ten minutes.</param>
public sealed record Phone(string Id, string Name, string Hash, DateTimeOffset Since, DateTimeOffset Seen);
