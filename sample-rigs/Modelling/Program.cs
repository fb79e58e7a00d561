using Modelling;

if (args.Length > 1 || args is ["--help" or "-h"])
{
    Console.Error.WriteLine("usage: Modelling [OUTDIR]   writes the models of the scene, each a .gltf and a .bin, into OUTDIR (default: sample-rigs/Quayside)");
    return 2;
}

var folder = args is [var named] ? named : Path.Combine("sample-rigs", "Quayside");
if (!Directory.Exists(folder))
{
    Console.Error.WriteLine($"The folder '{folder}' doesn't exist. Create it, or run from the repository's root.");
    return 2;
}

foreach (var file in Scene.Files())
{
    var path = Path.Combine(folder, file.Name);
    File.WriteAllBytes(path, file.Bytes);
    Console.WriteLine($"{path}: {file.Bytes.Length} bytes");
}

return 0;
