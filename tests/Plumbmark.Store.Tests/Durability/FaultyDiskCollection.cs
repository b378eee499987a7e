using Plumbmark.Reliability.Disk;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>There is one default file system in a process: tests that replace it run alone.</summary>
[CollectionDefinition(nameof(FaultyDisk), DisableParallelization = true)]
public sealed class FaultyDiskCollection;
