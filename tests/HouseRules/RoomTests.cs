using System.Text.RegularExpressions;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.HouseRules;

/// <summary>Data flows one way: a room knows only those that stand before it here, and siblings as told.</summary>
public sealed partial class RoomTests
{
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["Diagnostics"] = [],
        ["Quantities"] = [],
        ["Statistics"] = [],
        ["Water"] = ["Quantities"],
        ["Names"] = [],
        ["Paper"] = [],
        ["Species"] = ["Paper", "Water", "Quantities", "Names", "Diagnostics"],
        ["Rules"] = ["Species", "Quantities", "Names", "Diagnostics"],
        ["Regulations"] = ["Species", "Names", "Diagnostics"],
        ["Arrivals"] = ["Species", "Quantities", "Names", "Diagnostics"],
        ["Reading"] =
        [
            "Rules", "Arrivals", "Regulations", "Species", "Paper", "Water", "Quantities",
            "Names", "Diagnostics",
        ],
        ["Collection"] = ["Rules", "Arrivals", "Species", "Quantities", "Names", "Diagnostics"],
        ["Relatives"] = ["Collection", "Statistics", "Species", "Quantities", "Names", "Diagnostics"],
        ["Housing"] = ["Collection", "Species", "Water", "Quantities", "Names", "Diagnostics"],
        ["Proofing"] = ["Collection", "Rules", "Regulations", "Species", "Quantities", "Names", "Diagnostics"],
        ["Tankmates"] = ["Collection", "Species", "Quantities", "Names", "Diagnostics"],
        ["PackingLists"] = ["Collection", "Regulations", "Arrivals", "Species", "Names", "Diagnostics"],
        ["Renaming"] = ["Relatives", "Regulations", "Collection", "Species", "Paper", "Names"],
        ["Telling"] = ["Collection", "Arrivals", "Species", "Quantities", "Names", "Diagnostics"],
        ["Pages"] =
        [
            "Telling", "Proofing", "Rules", "Regulations", "Relatives", "Housing", "Tankmates", "Collection",
            "Arrivals",
            "Species", "Paper", "Water", "Quantities", "Names", "Diagnostics",
        ],
        ["Rendering"] = ["Pages", "Collection", "Species", "Quantities", "Names", "Diagnostics"],
        ["Publishing"] = ["Rendering", "Pages", "Diagnostics"],
        ["Commands"] =
        [
            "PackingLists", "Renaming", "Publishing", "Rendering", "Pages", "Relatives", "Housing", "Proofing",
            "Rules", "Regulations", "Tankmates", "Collection", "Reading", "Arrivals", "Species", "Paper", "Water",
            "Quantities", "Names", "Diagnostics",
        ],
    };

    /// <summary>Libraries that one room alone may name.</summary>
    private static readonly Dictionary<string, string[]> OnlyIn = new()
    {
        ["YamlDotNet"] = ["Reading"],
        ["NJsonSchema"] = ["Reading"],
        ["Newtonsoft"] = ["Reading"],
        ["Scriban"] = ["Rendering"],
        ["Markdig"] = ["Rendering"],
        ["AngleSharp"] = ["Publishing"],
        ["Spectre"] = ["Commands"],
        ["MathNet"] = ["Statistics"],
        ["QRCoder"] = ["Paper"],
        ["CsvHelper"] = ["PackingLists"],
        ["ExcelDataReader"] = ["PackingLists"],
    };

    [Fact]
    public void Every_folder_is_a_room_of_the_plan()
    {
        var folders = Directory.GetDirectories(Repository.At("generator")).Select(d => Path.GetFileName(d))
            .Where(d => d is not ("bin" or "obj"));
        Assert.Empty(folders.Except(MayKnow.Keys));
    }

    [Fact]
    public void A_room_knows_only_the_rooms_below_it()
    {
        foreach (var (room, file, text) in Sources())
        {
            foreach (Match named in RoomName().Matches(text))
            {
                var other = named.Groups[1].Value;
                Assert.True(
                    other == room || !MayKnow.ContainsKey(other) || MayKnow[room].Contains(other),
                    $"{file}: {room} must not know {other}");
            }
        }
    }

    [Fact]
    public void A_library_is_named_in_its_own_room_only()
    {
        foreach (var (room, file, text) in Sources())
        {
            foreach (var (library, rooms) in OnlyIn)
            {
                var names = Regex.IsMatch(text, $@"^using (static )?{library}\b", RegexOptions.Multiline);
                Assert.True(rooms.Contains(room) || !names, $"{file} names {library}");
            }
        }
    }

    [Fact]
    public void Clock_console_and_environment_stay_in_the_commands()
    {
        foreach (var (room, file, text) in Sources().Where(s => s.Room != "Commands"))
            Assert.False(
                Machine().IsMatch(text), $"{file} touches the machine ({room})");
    }

    [Fact]
    public void Namespaces_equal_folders()
    {
        foreach (var (room, file, text) in Sources())
            Assert.True(
                Regex.IsMatch(text, $@"^namespace CareSheets\.{room}(\.\w+)*;", RegexOptions.Multiline), file);
    }

    private static IEnumerable<(string Room, string File, string Text)> Sources()
    {
        var root = Repository.At("generator");
        var files = Repository.Files("generator", "*.cs").Where(f => Path.GetDirectoryName(f) != root).ToList();
        Assert.True(files.Count > 100);
        return files.Select(f =>
        {
            var path = Path.GetRelativePath(root, f).Replace('\\', '/');
            return (path.Split('/')[0], path, File.ReadAllText(f));
        });
    }

    [GeneratedRegex(@"\b(DateTime(Offset)?\.(Utc)?(Now|Today)|Console\.|Environment\.|CurrentCulture|new Random\(\))")]
    private static partial Regex Machine();

    [GeneratedRegex(@"\bCareSheets\.(\w+)\b")]
    private static partial Regex RoomName();
}
