using System.Security.Cryptography;
using System.Text.Json;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Phones;

/// <summary>The phones that have been let in. A cookie is an id and a secret; only the secret's hash is kept here.</summary>
internal sealed class PhoneList
{
    private static readonly TimeSpan s_seenEvery = TimeSpan.FromMinutes(10);
    private readonly Lock _lock = new();
    private readonly string? _path;
    private readonly TimeProvider _clock;
    private readonly Dictionary<string, Phone> _phones;

    /// <param name="folder">The owner's folder; null keeps the list only while the app runs.</param>
    /// <param name="clock">The clock.</param>
    public PhoneList(string? folder, TimeProvider clock)
    {
        _path = folder is null ? null : Path.Combine(folder, "phones.json");
        _clock = clock;
        _phones = Read(_path).ToDictionary(p => p.Id, StringComparer.Ordinal);
    }

    /// <summary>Every phone, in the order they came.</summary>
    public IReadOnlyList<Phone> All()
    {
        lock (_lock)
        {
            return [.. _phones.Values.OrderBy(p => p.Since).ThenBy(p => p.Id, StringComparer.Ordinal)];
        }
    }

    /// <summary>Lets a phone in and gives the value of its cookie, which is told only this once.</summary>
    public string LetIn(string name)
    {
        var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(8));
        var secret = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));
        var now = _clock.GetUtcNow();
        lock (_lock)
        {
            _phones[id] = new Phone(id, name, HashOf(secret), now, now);
            Write();
        }

        return $"{id}.{secret}";
    }

    /// <summary>The phone that a cookie belongs to; null for a stranger's.</summary>
    public Phone? Of(string? cookie)
    {
        if (cookie?.Split('.') is not [var id, var secret])
        {
            return null;
        }

        lock (_lock)
        {
            if (
                !_phones.TryGetValue(id, out var phone)
                || !CryptographicOperations.FixedTimeEquals(Convert.FromHexString(phone.Hash), Convert.FromHexString(HashOf(secret)))
            )
            {
                return null;
            }

            var now = _clock.GetUtcNow();
            if (now - phone.Seen > s_seenEvery)
            {
                phone = _phones[id] = phone with { Seen = now };
                Write();
            }

            return phone;
        }
    }

    /// <summary>Shuts a phone out. It is answered no page any more, from its next request on.</summary>
    public bool ShutOut(string id)
    {
        lock (_lock)
        {
            var was = _phones.Remove(id);
            if (was)
            {
                Write();
            }

            return was;
        }
    }

    private static string HashOf(string secret) => Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(secret)));

    /// <summary>A list that cannot be read lets nobody in: phones are then let in anew.</summary>
    private static IReadOnlyList<Phone> Read(string? path)
    {
        try
        {
            return path is not null && File.Exists(path)
                ? [.. (JsonSerializer.Deserialize<List<Phone>>(File.ReadAllBytes(path)) ?? []).Where(IsWhole)]
                : [];
        }
        catch (Exception e) when (e is JsonException or IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static bool IsWhole(Phone? phone) =>
        phone is { Id.Length: > 0, Name: not null, Hash.Length: 64 } && phone.Hash.All(char.IsAsciiHexDigit);

    private void Write()
    {
        if (_path is not null)
        {
            OwnFolder.Write(_path, JsonSerializer.SerializeToUtf8Bytes(_phones.Values.ToList()));
        }
    }
}
