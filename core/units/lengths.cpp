// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/lengths.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <vector>

#include "core/units/localised.h"

namespace howlmap {
namespace {

/// A number with the unit that follows it; unit empty when there is none.
struct Piece {
    double value = 0.0;
    std::string unit;
};

/// Typographic quotes and signs as their plain forms, upper case as lower.
std::string plain_text(std::string_view text) {
    static const std::pair<const char*, const char*> swaps[] = {{"\u2032", "'"},    {"\u2019", "'"}, {"\u2033", "\""},
                                                                {"\u201d", "\""},   {"\u2212", "-"}, {"\u00a0", " "},
                                                                {"\u00bd", " 1/2"}, {"''", "\""}};
    std::string out(text);
    for (const auto& [from, to] : swaps)
        for (auto at = out.find(from); at != std::string::npos; at = out.find(from))
            out.replace(at, std::string_view(from).size(), to);
    std::transform(out.begin(), out.end(), out.begin(), [](unsigned char c) { return c < 128 ? std::tolower(c) : c; });
    return out;
}

void skip_blanks(std::string_view& text) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
}

/// A number with decimal point or comma; none where the text does not begin with one.
std::optional<double> take_number(std::string_view& text) {
    skip_blanks(text);
    const std::size_t size = std::min(text.find_first_not_of("0123456789.,"), text.size());
    std::string digits(text.substr(0, size));
    if (digits.empty() || std::count_if(digits.begin(), digits.end(), [](char c) { return c == '.' || c == ','; }) > 1)
        return std::nullopt;
    std::replace(digits.begin(), digits.end(), ',', '.');
    double value = 0.0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error != std::errc() || (end != digits.data() + digits.size() && *end != '.')) return std::nullopt;
    text.remove_prefix(size);
    return value;
}

std::string take_unit(std::string_view& text) {
    skip_blanks(text);
    if (!text.empty() && (text.front() == '\'' || text.front() == '"')) {
        std::string unit(text.substr(0, 1));
        text.remove_prefix(1);
        return unit;
    }
    std::size_t size = 0;
    while (size < text.size() && text[size] >= 'a' && text[size] <= 'z') ++size;
    std::string unit(text.substr(0, size));
    text.remove_prefix(size);
    return unit;
}

/// "1/2" behind a number, as in 6 1/2".
std::optional<double> take_fraction(std::string_view& text) {
    std::string_view rest = text;
    const auto above = take_number(rest);
    if (!above || rest.empty() || rest.front() != '/') return std::nullopt;
    rest.remove_prefix(1);
    const auto below = take_number(rest);
    if (!below || *below == 0.0) return std::nullopt;
    text = rest;
    return *above / *below;
}

std::optional<std::vector<Piece>> pieces_of(std::string_view text) {
    std::vector<Piece> pieces;
    for (skip_blanks(text); !text.empty(); skip_blanks(text)) {
        Piece piece;
        if (const auto fraction = take_fraction(text)) {
            piece.value = *fraction;
        } else {
            const auto number = take_number(text);
            if (!number) return std::nullopt;
            piece.value = *number + take_fraction(text).value_or(0.0);
        }
        piece.unit = take_unit(text);
        pieces.push_back(piece);
    }
    return pieces.empty() ? std::nullopt : std::optional(pieces);
}

/// Metres in one of a unit, and its rank: larger units come first, each once.
std::optional<std::pair<double, int>> unit_of(const std::string& name) {
    if (name == "m") return std::pair{1.0, 0};
    if (name == "cm") return std::pair{0.01, 1};
    if (name == "mm") return std::pair{0.001, 2};
    if (name == "'" || name == "ft" || name == "feet" || name == "foot") return std::pair{kMetresPerFoot, 3};
    if (name == "\"" || name == "in" || name == "inch" || name == "inches") return std::pair{kMetresPerInch, 4};
    return std::nullopt;
}

std::optional<double> metres_of(const std::vector<Piece>& pieces, LengthUnit plain) {
    double metres = 0.0;
    int last_rank = -1;
    for (const Piece& piece : pieces) {
        std::string unit = piece.unit;
        if (unit.empty()) {
            if (pieces.size() == 1)
                unit = plain == LengthUnit::metres ? "m" : "ft";
            else if (last_rank == 3)
                unit = "in";  // 3' 6
        }
        const auto known = unit_of(unit);
        if (!known || known->second <= last_rank) return std::nullopt;
        metres += piece.value * known->first;
        last_rank = known->second;
    }
    return metres;
}

}  // namespace

tl::expected<double, std::string> parse_length(std::string_view text, LengthUnit plain) {
    const std::string words = plain_text(text);
    std::string_view rest = words;
    skip_blanks(rest);
    const bool negative = !rest.empty() && rest.front() == '-';
    if (negative || (!rest.empty() && rest.front() == '+')) rest.remove_prefix(1);
    const auto pieces = pieces_of(rest);
    const auto metres = pieces ? metres_of(*pieces, plain) : std::nullopt;
    if (!metres) return tl::unexpected(fmt::format("\"{}\" is no length; expected e.g. 1.07 m or 3' 6\"", text));
    return negative ? -*metres : *metres;
}

std::string metres_text(double metres) {
    const double rounded = std::round(metres * 100.0) / 100.0;
    return localised("{:.2f} m", rounded == 0.0 ? 0.0 : rounded);
}

std::string feet_text(double metres) {
    const long halves = std::lround(std::abs(metres) / kMetresPerInch * 2.0);
    const long feet = halves / 24, inches = halves % 24 / 2;
    return fmt::format("{}{}' {}{}\"", metres < 0.0 && halves > 0 ? "-" : "", feet, inches, halves % 2 ? " 1/2" : "");
}

std::string length_text(double metres, LengthUnit unit) {
    return unit == LengthUnit::metres ? metres_text(metres) : feet_text(metres);
}

}  // namespace howlmap
