using System.Security.Cryptography;

namespace Plumbmark.Store;

public sealed partial class Journals
{
    /// <summary>Keeps a picture with a car and gives its name; the same picture again has the same name and is kept once. Null when there is no such car.</summary>
    /// <param name="car">The car.</param>
    /// <param name="contentType">Such as <c>image/jpeg</c>.</param>
    /// <param name="bytes">The picture as it is to be shown; what must not be kept has been taken out before.</param>
    public string? KeepPhoto(long car, string contentType, byte[] bytes) =>
        InTransaction(() =>
        {
            if (_connection.One("SELECT 1 FROM car WHERE id = $car", ("$car", car)) is null)
            {
                return null;
            }

            var name = PhotoName(bytes);
            _connection.Run(
                "INSERT INTO photo (car, name, content_type, added_at, bytes) VALUES ($car, $name, $type, $now, $bytes) ON CONFLICT DO NOTHING",
                ("$car", car),
                ("$name", name),
                ("$type", contentType),
                ("$now", Text(_clock.GetUtcNow())),
                ("$bytes", bytes)
            );
            return name;
        });

    /// <summary>A picture of a car; null when there is none of that name.</summary>
    public KeptPhoto? Photo(long car, string name) =>
        Do(() =>
            _connection
                .All(
                    "SELECT content_type, bytes FROM photo WHERE car = $car AND name = $name",
                    row => new KeptPhoto(name, row.GetString(0), row.GetFieldValue<byte[]>(1)),
                    ("$car", car),
                    ("$name", name)
                )
                .FirstOrDefault()
        );

    /// <summary>A picture's name, from its content.</summary>
    internal static string PhotoName(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 12));
}
