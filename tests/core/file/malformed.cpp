// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/file/malformed.h"

#include <set>

#include "tests/core/file/samples.h"

namespace howlmap::test {
namespace {
using List = std::vector<Malformed>;

bool unknown(const std::string& pointer) { return pointer.find("/x_") != std::string::npos; }

/// JSON pointers of all known values of the sample.
std::vector<std::string> pointers() {
    std::vector<std::string> out;
    const Json flat = sample().flatten();
    for (const auto& [pointer, value] : flat.items())
        if (!unknown(pointer)) out.push_back(pointer);
    return out;
}

/// The same, but of objects and lists.
std::vector<std::string> containers() {
    std::set<std::string> out;
    for (std::string pointer : pointers())
        while (!(pointer = pointer.substr(0, pointer.rfind('/'))).empty()) out.insert(pointer);
    return {out.begin(), out.end()};
}

Json at(const std::string& pointer) { return sample()[Json::json_pointer(pointer)]; }

void wrong_types(List& out) {
    for (const std::string& pointer : pointers()) {
        const Json value = at(pointer);
        const bool free_choice =
            pointer.ends_with("/pattern") || pointer.ends_with("/absorption") || pointer.ends_with("/spectrum");
        if (value.is_number()) {
            out.push_back({"a number as text", sample_with(pointer, value.dump()), pointer, ""});
            out.push_back({"truth for a number", sample_with(pointer, true), pointer, ""});
        } else if (value.is_boolean()) {
            out.push_back({"a number for truth", sample_with(pointer, 1), pointer, "true or false"});
            out.push_back({"truth as text", sample_with(pointer, "true"), pointer, "true or false"});
        } else if (value.is_string()) {
            if (!pointer.ends_with("/pattern"))
                out.push_back({"a number for text", sample_with(pointer, 1), pointer, ""});
            out.push_back({"a list for text", sample_with(pointer, Json::array({value})), pointer, ""});
        }
        if (!pointer.ends_with("/max_spl_db") && !pointer.ends_with("/own_acoustic_dba"))
            out.push_back({"null", sample_with(pointer, nullptr), pointer, ""});
        if (!free_choice) out.push_back({"an object for a value", sample_with(pointer, Json::object()), pointer, ""});
    }
    for (const std::string& pointer : containers()) {
        out.push_back({"truth for an object or list", sample_with(pointer, false), pointer, ""});
        out.push_back({"null for an object or list", sample_with(pointer, nullptr), pointer, ""});
        const bool object = at(pointer).is_object();
        out.push_back({object ? "a list for an object" : "an object for a list",
                       sample_with(pointer, object ? Json::array({1}) : Json{{"a", 1}}), pointer, ""});
    }
}

void missing_keys(List& out) {
    for (const std::string pointer : {"/format",
                                      "/version",
                                      "/stage",
                                      "/stage/outline",
                                      "/stage/risers/0/id",
                                      "/stage/risers/0/name",
                                      "/stage/risers/0/outline",
                                      "/stage/risers/0/height_m",
                                      "/stage/surfaces/back/y",
                                      "/stage/surfaces/front/y",
                                      "/stage/surfaces/left/x",
                                      "/stage/surfaces/right/x",
                                      "/stage/surfaces/ceiling/z",
                                      "/stage/surfaces/back/absorption",
                                      "/stage/room/volume_m3",
                                      "/stage/room/rt60_s",
                                      "/loudspeakers/0/id",
                                      "/loudspeakers/0/name",
                                      "/loudspeakers/0/kind",
                                      "/loudspeakers/0/position",
                                      "/loudspeakers/0/directivity",
                                      "/loudspeakers/0/directivity/type",
                                      "/loudspeakers/0/directivity/horizontal_deg",
                                      "/loudspeakers/0/directivity/vertical_deg",
                                      "/loudspeakers/0/directivity/width_m",
                                      "/loudspeakers/0/directivity/height_m",
                                      "/loudspeakers/1/directivity/sphere_radius_m",
                                      "/loudspeakers/1/directivity/cap_radius_m",
                                      "/loudspeakers/2/directivity/angles_deg",
                                      "/loudspeakers/2/directivity/hz",
                                      "/loudspeakers/2/directivity/db",
                                      "/loudspeakers/0/response/table/0/hz",
                                      "/loudspeakers/0/response/table/0/db",
                                      "/inputs/0/id",
                                      "/inputs/0/channel",
                                      "/inputs/0/name",
                                      "/inputs/0/kind",
                                      "/inputs/0/position",
                                      "/inputs/0/microphone",
                                      "/inputs/0/microphone/pattern",
                                      "/inputs/0/high_pass/hz",
                                      "/inputs/0/equaliser/0/hz",
                                      "/inputs/0/equaliser/0/q",
                                      "/inputs/0/equaliser/0/gain_db",
                                      "/inputs/1/pickup",
                                      "/inputs/1/pickup/isolation_db",
                                      "/inputs/1/pickup/modes/0/hz",
                                      "/inputs/1/pickup/modes/0/q",
                                      "/inputs/1/pickup/modes/0/gain_db",
                                      "/inputs/3/microphone/pattern/type",
                                      "/performers/0/id",
                                      "/performers/0/name",
                                      "/performers/0/position",
                                      "/mixes/0/id",
                                      "/mixes/0/number",
                                      "/mixes/0/name",
                                      "/mixes/0/loudspeakers",
                                      "/mixes/0/sends/0/input",
                                      "/mixes/0/sends/0/level_db",
                                      "/mixes/0/notches/0/q",
                                      "/backline/0/id",
                                      "/backline/0/kind",
                                      "/backline/0/position",
                                      "/listeners/0/id",
                                      "/listeners/0/position",
                                      "/marks/0/id",
                                      "/marks/0/kind",
                                      "/marks/0/position",
                                      "/soundcheck/0/hz",
                                      "/soundcheck/0/band"}) {
        Json show = sample();
        const std::size_t slash = std::string(pointer).rfind('/');
        show[Json::json_pointer(pointer.substr(0, slash))].erase(pointer.substr(slash + 1));
        out.push_back({"a key is missing", show.dump(), pointer, "found nothing"});
    }
}

void wrong_words(List& out) {
    for (const auto& [pointer, expected] :
         std::vector<std::pair<std::string, std::string>>{{"/format", "\"howlmap-show\""},
                                                          {"/display/units", "\"imperial\""},
                                                          {"/loudspeakers/0/kind", "\"wedge\""},
                                                          {"/loudspeakers/0/polarity", "\"inverted\""},
                                                          {"/loudspeakers/0/directivity/type", "\"cap_on_sphere\""},
                                                          {"/inputs/0/kind", "\"pickup\""},
                                                          {"/inputs/0/microphone/pattern", "\"figure_8\""},
                                                          {"/inputs/0/spectrum", "\"strings\""},
                                                          {"/inputs/3/microphone/pattern/type", "\"table\""},
                                                          {"/performers/0/hears", "\"in_ear\""},
                                                          {"/mixes/0/polarity", "\"normal\""},
                                                          {"/backline/0/spectrum", "\"bass\""}})
        for (const char* word : {"", "Wedge", "something else", "omni ", "normal\n"})
            out.push_back({"an unknown word", sample_with(pointer, word), pointer, expected});
    for (const char* date : {"2032-02-30", "2031-02-29", "2031-13-01", "2031-00-10", "2031-1-1", "14.05.2031",
                             "2031-05-14T20:00", "20310514", "+031-05-14", "today"})
        out.push_back({"no date of the calendar", sample_with("/date", date), "/date", "a date such as"});
}

void shapes(List& out) {
    const auto add = [&](const char* kind, const std::string& pointer, Json value, const std::string& place,
                         const char* expected) {
        out.push_back({kind, sample_with(pointer, std::move(value)), place, expected});
    };
    for (const char* pointer :
         {"/loudspeakers/0/position", "/inputs/0/position", "/backline/0/position", "/listeners/0/position"}) {
        add("a point of too few numbers", pointer, {1, 2}, pointer, "a list of 3");
        add("a point of too many numbers", pointer, {1, 2, 3, 4}, pointer, "a list of 3");
    }
    for (const char* pointer : {"/performers/0/position", "/marks/0/position", "/stage/outline/0"}) {
        add("a point of too few numbers", pointer, Json::array({1}), pointer, "a list of 2");
        add("a point of too many numbers", pointer, {1, 2, 3}, pointer, "a list of 2");
    }
    for (const char* pointer : {"/stage/outline", "/stage/risers/0/outline"}) {
        add("an outline of too few corners", pointer, {{0, 0}, {1, 1}}, pointer, "a list of 3 to 500");
        add("an outline that crosses itself", pointer, {{0, 0}, {4, 4}, {4, 0}, {0, 4}}, pointer, "a simple polygon");
        add("an outline that crosses itself", pointer, {{0, 0}, {4, 0}, {4, 3}, {2, -1}, {0, 3}}, pointer,
            "a simple polygon");
        add("an outline without area", pointer, {{0, 0}, {1, 1}, {2, 2}}, pointer, "a simple polygon");
        add("an outline without area", pointer, {{1, 1}, {1, 1}, {1, 1}}, pointer, "a simple polygon");
    }
    const std::string table = "/loudspeakers/2/directivity", pattern = "/inputs/3/microphone/pattern";
    for (const std::string& place : {table, pattern}) {
        add("table values that do not rise", place + "/angles_deg/1", 0, place + "/angles_deg/1",
            "above the one before");
        add("table values that do not rise", place + "/hz/1", 100, place + "/hz/1", "above the one before");
        add("a table of uneven rows", place + "/db/0", {0, -1}, place + "/db/0", "one for each of the");
        add("a table of uneven rows", place + "/hz", {100, 200, 300, 400, 500}, place + "/db", "a row for each");
        add("an empty table", place + "/angles_deg", Json::array(), place + "/angles_deg", "a list of 1 or more");
        add("an empty table", place + "/db", Json::array(), place + "/db", "a list of 1 or more");
    }
    add("table values that do not rise", "/loudspeakers/0/response/table/1/hz", 100,
        "/loudspeakers/0/response/table/1/hz", "above the one before");
    add("a cap wider than its sphere", "/loudspeakers/1/directivity/cap_radius_m", 0.21,
        "/loudspeakers/1/directivity/cap_radius_m", "at most the sphere's radius");
    for (const char* key : {"1001", "1000.0", "1e3", "32", "", "bass", "16", "25000", "-20"}) {
        add("no nominal third-octave band", "/mixes/0/graphic_eq", {{key, -3}},
            std::string("/mixes/0/graphic_eq/") + key, "a nominal band in Hz");
        add("no nominal third-octave band", "/inputs/0/spectrum", {{key, -3}}, std::string("/inputs/0/spectrum/") + key,
            "a nominal band in Hz");
    }
    for (const char* key : {"31.5", "16000", "100", "x"})
        add("no nominal octave band", "/stage/surfaces/back/absorption", {{key, 0.5}},
            std::string("/stage/surfaces/back/absorption/") + key, "\"8000\"");
    add("a band list without a band", "/stage/surfaces/back/absorption", Json::object(),
        "/stage/surfaces/back/absorption", "at least one band");
    add("a band list without a band", "/inputs/0/spectrum", Json::object(), "/inputs/0/spectrum", "at least one band");
}

void identities(List& out) {
    const std::vector<std::string> ids{"/stage/risers/0", "/loudspeakers/0", "/inputs/0",    "/performers/0",
                                       "/mixes/0",        "/backline/0",     "/listeners/0", "/marks/0"};
    for (std::size_t i = 0; i < ids.size(); ++i) {
        out.push_back({"an empty id", sample_with(ids[i] + "/id", ""), ids[i] + "/id", "not empty"});
        if (i + 1 < ids.size())
            out.push_back({"an id twice", sample_with(ids[i + 1] + "/id", at(ids[i] + "/id")), ids[i + 1] + "/id",
                           "an id of its own"});
    }
    out.push_back({"an id twice", sample_with("/marks/1/id", "power-1"), "/marks/1/id", "/marks/0/id"});
    for (const char* pointer : {"/inputs/0/performer", "/performers/0/mix", "/mixes/0/loudspeakers/1",
                                "/mixes/0/sends/1/input", "/soundcheck/0/input", "/soundcheck/0/mix"})
        for (const char* id : {"nobody", "Ada", "power-1"})
            out.push_back({"a reference to nothing", sample_with(pointer, id), pointer, "the id of"});
    for (const char* pointer : {"/mixes/0/loudspeakers/0", "/mixes/0/sends/0/input"})
        out.push_back({"a reference to nothing", sample_with(pointer, ""), pointer, ""});
    out.push_back({"an input sent twice", sample_with("/mixes/0/sends/2/input", "voice"), "/mixes/0/sends/2/input",
                   "one send of each input"});
    out.push_back({"a loudspeaker twice in a mix", sample_with("/mixes/0/loudspeakers/1", "wedge-1"),
                   "/mixes/0/loudspeakers/1", "each id once"});
}

void versions(List& out) {
    for (const Json& version : std::vector<Json>{0, -1, 1.5, 1e300, "1", nullptr, true})
        out.push_back({"no version", sample_with("/version", version), "/version", "a whole number from 1"});
    for (const int version : {2, 3, 1000}) {
        Json show = sample();
        show["version"] = version;
        show["mixes"][0]["polarity"] = "sideways";
        out.push_back({"a newer version that cannot be read", show.dump(), "/version", "newer Howlmap"});
    }
    for (const char* text : {"[]", "{}", "1", "\"howlmap-show\"", "null", "[{\"format\": \"howlmap-show\"}]"})
        out.push_back({"no show", text, std::string(text) == "{}" ? "/format" : "line", ""});
}

void duplicate_keys(List& out) {
    const std::string text = sample_text();
    for (const auto& [key, place] :
         std::vector<std::pair<std::string, std::string>>{{"title", "/title"},
                                                          {"version", "/version"},
                                                          {"outline", "/stage/outline"},
                                                          {"y", "/stage/surfaces/back/y"},
                                                          {"31.5", "/mixes/0/graphic_eq/31.5"},
                                                          {"air", "/air"},
                                                          {"x_root", "/x_root"},
                                                          {"low_hz", "/loudspeakers/0/response/low_hz"},
                                                          {"deep", "/x_root/nested/2/deep"}}) {
        std::string twice = text;
        const std::string quoted = "\"" + key + "\": ";
        twice.insert(text.find(quoted), quoted + "0, ");
        out.push_back({"a key twice", twice, place, "every key once"});
    }
    out.push_back({"a key twice", R"({"a~/b": 1, "a~\/b": 2})", "/a~0~1b", "every key once"});
}

void no_json(List& out) {
    const std::string text = sample_text();
    const auto add = [&](const char* kind, std::string file) { out.push_back({kind, std::move(file), "line", ""}); };
    const auto replaced = [&](const std::string& from, const std::string& to) {
        std::string file = text;
        return file.replace(file.find(from), from.size(), to);
    };
    for (const char* comment : {"// note\n", "/* note */", "# note\n", "<!-- -->", "-- note\n", "; note\n"}) {
        add("a comment", comment + text);
        add("a comment", replaced("\"air\"", comment + std::string("\"air\"")));
        add("trailing text", text + comment);
    }
    for (const char* tail : {"{}", "}", "]", ",", "x", "null", "\xEF\xBB\xBF", "0"}) add("trailing text", text + tail);
    for (const char* number : {"NaN", "nan", "Infinity", "-Infinity", "inf", "1e999", "-1e999", "0x12", "018", "+18",
                               "18.", ".5", "1e", "--1", "1_000", "1,5", "٣"})
        add("no JSON number", replaced("18.5", number));
    for (const char* word : {"True", "TRUE", "yes", "undefined", "None", "nul", "truee"})
        add("no JSON word", replaced("\"cupped\": true", std::string("\"cupped\": ") + word));
    for (const char* string : {"'Ada'", "Ada", "\"Ada", "\"A\\da\"", "\"\\u12\"", "\"\\uD800\"", "\"\\uDC00x\"",
                               "\"\\x41\"", "\"A\tda\"", "\"A\nda\"", "\"A\x01\"", "\"A\x7F\\\""})
        add("no JSON text", replaced("\"Ada\"", string));
    for (const char* bytes : {"\xFF", "\xC3", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80",
                              "\xF8\x88\x80\x80\x80", "\xE2\x82", "\x80",
                              "Gr\xF6\xDF"
                              "e"})
        add("no UTF-8", replaced("\"Ada\"", "\"" + std::string(bytes) + "\""));
    add("a trailing comma", replaced("\"x_root\"", "\"x_last\": 1,}"));
    for (const char* from : {"[-4.2", "62,", "\"x_who\": 1"}) {
        if (text.find(from) == std::string::npos) continue;
        add("a trailing comma", replaced(from, std::string(from) + ",,"));
    }
    add("a trailing comma", replaced("[1, 2.5, {\"a\": null}]", "[1, 2.5,]"));
    add("a colon or comma is missing", replaced("\"air\": {", "\"air\" {"));
    add("a colon or comma is missing", replaced("\"air\": {", "\"air\", {"));
    add("a colon or comma is missing", replaced("\"humidity_pct\": 62,", "\"humidity_pct\": 62"));
    add("a colon or comma is missing", replaced("[0.2, 0.9, 0.3]", "[0.2 0.9 0.3]"));
    add("a colon or comma is missing", replaced("[0.2, 0.9, 0.3]", "[0.2; 0.9; 0.3]"));
    add("brackets that do not match", replaced("[0.2, 0.9, 0.3]", "[0.2, 0.9, 0.3}"));
    add("brackets that do not match", replaced("[0.2, 0.9, 0.3]", "(0.2, 0.9, 0.3)"));
    add("brackets that do not match", text.substr(0, text.rfind('}')));
    add("a key that is no text", replaced("\"air\":", "air:"));
    add("a key that is no text", replaced("\"air\":", "1:"));
    add("a key that is no text", replaced("\"air\":", "'air':"));
    for (const std::size_t where : {std::size_t{0}, text.find("Ada"), text.size()})
        add("a zero byte", std::string(text).insert(where, 1, '\0'));
    for (const std::string& file : {std::string(), std::string("\xEF\xBB\xBF"), std::string("\xEF\xBB"),
                                    std::string(" \n\t"), std::string("\xEF\xBB\xBF\xEF\xBB\xBF{}")})
        add("nothing in the file", file);
    std::string wide = "\xFF\xFE";
    for (const char c : least().dump()) (wide += c) += '\0';
    add("another encoding", wide);
    add("another encoding", wide.substr(2));
    add("another kind of file", "%PDF-1.7\n1 0 obj");
    add("another kind of file", "PK\x03\x04");
    add("another kind of file", "<?xml version=\"1.0\"?><show/>");
    add("another kind of file", "title,venue\nGig,Barn\n");
}

}  // namespace

std::vector<Malformed> malformed_files() {
    List out;
    wrong_types(out);
    missing_keys(out);
    wrong_words(out);
    shapes(out);
    identities(out);
    versions(out);
    duplicate_keys(out);
    no_json(out);
    return out;
}

}  // namespace howlmap::test
