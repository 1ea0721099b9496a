// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/fields_out.h"

#include <algorithm>

#include "core/file/fields/parts.h"
#include "core/units/number_text.h"

namespace howlmap::file {
namespace {
template <class List>
void list_out(JsonWriter& out, const List& items, Layout layout) {
    out.open('[', layout);
    for (const auto& item : items) value_out(out, item);
    out.close(']');
}
}  // namespace

void value_out(JsonWriter& out, double value) { out.number(value); }
void value_out(JsonWriter& out, int value) { out.raw(std::to_string(value)); }
void value_out(JsonWriter& out, std::uint64_t value) { out.raw(std::to_string(value)); }
void value_out(JsonWriter& out, bool value) { out.raw(value ? "true" : "false"); }
void value_out(JsonWriter& out, const std::string& value) { out.text(value); }
void value_out(JsonWriter& out, Vec2 value) { list_out(out, std::array{value.x, value.y}, Layout::one_line); }
void value_out(JsonWriter& out, Vec3 value) { list_out(out, std::array{value.x, value.y, value.z}, Layout::one_line); }
void value_out(JsonWriter& out, const Outline& value) { list_out(out, value, Layout::lines); }
void value_out(JsonWriter& out, const std::vector<std::string>& value) { list_out(out, value, Layout::one_line); }
void value_out(JsonWriter& out, const std::vector<double>& value) { list_out(out, value, Layout::one_line); }
void value_out(JsonWriter& out, const std::vector<std::vector<double>>& value) { list_out(out, value, Layout::lines); }

void bands_out(JsonWriter& out, const std::map<int, double>& value, std::span<const double> nominals) {
    out.open('{', Layout::one_line);
    for (const auto& [band, db] : value) {
        out.key(number_text(nominals[static_cast<std::size_t>(band)]));
        out.number(db);
    }
    out.close('}');
}

void value_out(JsonWriter& out, const Absorption& value) {
    if (const double* same = std::get_if<double>(&value))
        out.number(*same);
    else
        bands_out(out, std::get<1>(value), kNominalOctaves);
}

void value_out(JsonWriter& out, const Spectrum& value) {
    if (const SpectrumName* name = std::get_if<SpectrumName>(&value))
        value_out(out, *name);
    else
        bands_out(out, std::get<1>(value), kNominalThirdOctaves);
}

void value_out(JsonWriter& out, const Pattern& value) {
    if (const PatternName* name = std::get_if<PatternName>(&value))
        value_out(out, *name);
    else if (const double* number = std::get_if<double>(&value))
        out.number(*number);
    else
        write_object(out, std::get<DirectivityTable>(value), OnlyTable{});
}

const Extras& kept_in(const Directivity& value) {
    return std::visit([](const auto& of) -> const Extras& { return of.extras; }, value);
}

void FieldsOut::rest(const Extras& extras) {
    for (const auto& [key, json] : extras) {
        if (std::find(written_.begin(), written_.end(), key) != written_.end()) continue;
        out_.key(key);
        out_.raw(json);
    }
}

}  // namespace howlmap::file
