// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/json_writer.h"

#include <cmath>
#include <stdexcept>

#include "core/file/json_tree.h"
#include "core/units/number_text.h"

namespace howlmap::file {

void JsonWriter::open(char bracket, Layout layout) {
    begin_value();
    if (!levels_.empty() && levels_.back().layout == Layout::one_line) layout = Layout::one_line;
    out_ += bracket;
    levels_.push_back({layout, true, 0, {}});
}

void JsonWriter::close(char bracket) {
    const Level level = levels_.back();
    levels_.pop_back();
    if (level.layout == Layout::lines && !level.empty) out_ += "\n" + std::string(2 * levels_.size(), ' ');
    out_ += bracket;
}

void JsonWriter::key(std::string_view key) {
    separate();
    levels_.back().key = key;
    out_ += in_quotes(key) + ": ";
    after_key_ = true;
}

void JsonWriter::raw(std::string_view json) {
    begin_value();
    out_ += json;
}

void JsonWriter::text(std::string_view value) { raw(in_quotes(value)); }

void JsonWriter::number(double value) {
    begin_value();
    if (!std::isfinite(value)) throw std::domain_error(pointer() + ": a number that is not finite cannot be written");
    out_ += number_text(value);
}

void JsonWriter::begin_value() {
    if (!after_key_ && !levels_.empty()) separate();
    after_key_ = false;
}

void JsonWriter::separate() {
    Level& level = levels_.back();
    if (!level.empty) {
        out_ += level.layout == Layout::lines ? "," : ", ";
        ++level.index;
    }
    if (level.layout == Layout::lines) out_ += "\n" + std::string(2 * levels_.size(), ' ');
    level.empty = false;
}

std::string JsonWriter::pointer() const {
    std::string out;
    for (const Level& level : levels_)
        out += "/" + (level.key.empty() ? std::to_string(level.index) : pointer_token(level.key));
    return out;
}

}  // namespace howlmap::file
