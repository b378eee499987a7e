namespace Plumbmark.Store;

/// <summary>What came of bringing a backup back.</summary>
/// <param name="Added">Cars that were not here.</param>
/// <param name="Extended">Cars that were here and to which the backup had later entries.</param>
/// <param name="AlreadyThere">Cars of which the backup holds nothing that is not here.</param>
public sealed record Restored(int Added, int Extended, int AlreadyThere);
