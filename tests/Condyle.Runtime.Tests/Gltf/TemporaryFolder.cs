namespace Condyle.Runtime.Tests.Gltf;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("condyle-");

    public string this[string name] => Path.Combine(folder.FullName, name);

    public string[] FileNames => [.. folder.GetFiles("*", SearchOption.AllDirectories).Select(file => file.Name).Order(StringComparer.Ordinal)];

    public string Write(string name, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(this[name])!);
        File.WriteAllBytes(this[name], bytes);
        return this[name];
    }

    public string Write(string name, string text) => Write(name, System.Text.Encoding.UTF8.GetBytes(text));

    public void Dispose() => folder.Delete(recursive: true);
}
