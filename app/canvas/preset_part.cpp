// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/preset_part.h"

#include <QCoreApplication>
#include <nlohmann/json.hpp>

#include "core/file/read.h"
#include "core/show/edits.h"

namespace howlmap::app {
namespace {
using Json = nlohmann::ordered_json;

/// An id that reads well: lower case letters, digits and hyphens of the name.
std::string id_from(const std::string& name) {
    std::string id;
    for (const char c : name) {
        const auto u = static_cast<unsigned char>(c);
        if (std::isalnum(u) && u < 128)
            id += static_cast<char>(std::tolower(u));
        else if (!id.empty() && id.back() != '-')
            id += '-';
    }
    while (!id.empty() && id.back() == '-') id.pop_back();
    return id.empty() ? "object" : id;
}

/// The item as the show file would hold it, in the list it belongs to.
Json show_around(const Json& preset, const Show& target) {
    const std::string list = preset.at("list").get<std::string>();
    Json item = preset.at("item");
    const std::string name = item.value("name", preset.value("name", list));
    item["id"] = fresh_id(target, id_from(name));
    if (list != "marks") item["name"] = fresh_name(target, name);
    if (list == "inputs") item["channel"] = free_channel(target);
    const bool flat = list == "performers" || list == "marks";
    if (flat)
        item["position"] = {0.0, 0.0};
    else if (list != "risers")
        item["position"] = {0.0, 0.0, preset.value("height_m", 0.0)};
    Json show = {{"format", "howlmap-show"}, {"version", 1}};
    const std::vector<std::vector<double>> floor = {{-4, 0}, {4, 0}, {4, 5}, {-4, 5}};
    show["stage"]["outline"] = floor;
    if (list == "risers")
        show["stage"]["risers"] = Json::array({item});
    else
        show[list] = Json::array({item});
    return show;
}
}  // namespace

QString preset_mime_type() { return QStringLiteral("application/vnd.howlmap.preset+json"); }

tl::expected<Show, QString> part_of_preset(const QByteArray& preset_json, const Show& target) {
    try {
        const Json preset = Json::parse(preset_json.toStdString());
        auto read = read_show(show_around(preset, target).dump());
        if (read) return std::move(read->show);
        return tl::make_unexpected(QCoreApplication::translate("Plan", "This part cannot be placed: %1")
                                       .arg(QString::fromStdString(read.error().message())));
    } catch (const nlohmann::json::exception& error) {
        return tl::make_unexpected(
            QCoreApplication::translate("Plan", "This part cannot be placed: %1").arg(QString::fromUtf8(error.what())));
    }
}

}  // namespace howlmap::app
