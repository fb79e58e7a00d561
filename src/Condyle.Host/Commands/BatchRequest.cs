namespace Condyle.Host.Commands;

/// <summary>Files of clips to bake.</summary>
/// <param name="Bake">How, and where to.</param>
/// <param name="Files">Files, patterns and folders.</param>
/// <param name="Jobs">How many are baked at a time; as many as there are processors when null.</param>
/// <param name="Shard">Which share of them; all when null.</param>
/// <param name="Profile">The engine profile that says what becomes of them; the delivered file with their bake when null.</param>
internal sealed record BatchRequest(BakeRequest Bake, IReadOnlyList<string> Files, int? Jobs, string? Shard, string? Profile);
