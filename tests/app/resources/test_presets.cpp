// SPDX-License-Identifier: GPL-3.0-or-later
// Every preset must be something that a show takes, that the plan can draw and that says where its figures come from.
#include <QDir>
#include <QFile>
#include <QLocale>
#include <nlohmann/json.hpp>
#include <set>

#include "app/panels/parts/part_list.h"
#include "core/file/read.h"
#include "tests/support/registry.h"

using namespace howlmap;
using nlohmann::json;

namespace {

QString resource(const QString& path) { return QStringLiteral(HOWLMAP_SOURCE_DIR "/resources/") + path; }

json family(const QString& file) {
    QFile in(resource(QStringLiteral("presets/") + file));
    if (!in.open(QIODevice::ReadOnly)) return {};
    return json::parse(in.readAll().toStdString());
}

/// A show that holds nothing but this preset, placed as the plan would place it.
json show_with(const json& preset) {
    json item = preset["item"];
    const std::string list = preset["list"];
    item["id"] = "one";
    if (list == "inputs") item["channel"] = 1;
    const bool flat = list == "performers" || list == "marks";
    if (list != "risers" && item.value("kind", "") != "line")
        item["position"] = flat ? json{1.0, 2.0} : json{1.0, 2.0, preset["height_m"]};
    json show{{"format", "howlmap-show"}, {"version", 1}};
    show["stage"] = {{"outline", {{-4, 0}, {4, 0}, {4, 5}, {-4, 5}}}, {"surfaces", {{"floor", {{"absorption", 0.1}}}}}};
    (list == "risers" ? show["stage"] : show)[list] = json::array({item});
    return show;
}

void no_strangers(const Extras& extras) {
    for (const auto& [key, value] : extras) QVERIFY2(key == "symbol", key.c_str());
}

void no_strangers_in(const Input& input) {
    no_strangers(input.extras);
    if (const auto* microphone = microphone_of(input)) {
        QVERIFY(microphone->extras.empty() && microphone->response.extras.empty());
        for (const auto& point : microphone->response.table) QVERIFY(point.extras.empty());
    }
    if (const auto* pickup = pickup_of(input)) {
        QVERIFY(pickup->extras.empty());
        for (const auto& mode : pickup->modes) QVERIFY(mode.extras.empty());
    }
}

void no_strangers_in(const Show& show) {
    QVERIFY(show.extras.empty());
    for (const auto& riser : show.stage.risers) QVERIFY(riser.extras.empty());
    for (const auto& loudspeaker : show.loudspeakers) {
        no_strangers(loudspeaker.extras);
        QVERIFY(loudspeaker.response.extras.empty());
        std::visit([](const auto& directivity) { QVERIFY(directivity.extras.empty()); }, loudspeaker.directivity);
    }
    for (const auto& input : show.inputs) no_strangers_in(input);
    for (const auto& performer : show.performers) no_strangers(performer.extras);
    for (const auto& backline : show.backline) no_strangers(backline.extras);
    for (const auto& listener : show.listeners) no_strangers(listener.extras);
    for (const auto& mark : show.marks) no_strangers(mark.extras);
}

}  // namespace

class PresetsTest : public QObject {
    Q_OBJECT

  private Q_SLOTS:
    void every_preset_data() {
        QTest::addColumn<QString>("text");
        std::set<std::string> ids;
        for (const QString& file : QDir(resource(QStringLiteral("presets"))).entryList({QStringLiteral("*.json")})) {
            const json all = family(file);
            QCOMPARE(all.value("format", ""), std::string("howlmap-presets"));
            QCOMPARE(all.value("version", 0), 1);
            QCOMPARE(all.value("family", "") + ".json", file.toStdString());
            for (const json& preset : all["presets"]) {
                const std::string id = preset["id"];
                QVERIFY2(ids.insert(id).second, id.c_str());
                QTest::newRow(id.c_str()) << QString::fromStdString(preset.dump());
            }
        }
        QVERIFY(ids.size() > 60);
    }

    void every_preset() {
        QFETCH(QString, text);
        const json preset = json::parse(text.toStdString());
        const auto read = read_show(show_with(preset).dump());
        QVERIFY2(read, read ? "" : read.error().message().c_str());
        no_strangers_in(read->show);
        for (const char* key : {"name", "name_de", "group", "group_de", "source"})
            QVERIFY2(!preset.value(key, "").empty(), key);
        QVERIFY(preset["keywords"].is_array());
        const auto symbol = QString::fromStdString(preset.value("symbol", ""));
        for (const char* end : {".svg", "-small.svg"})
            QVERIFY2(QFile::exists(resource(QStringLiteral("symbols/") + symbol + QLatin1String(end))),
                     qPrintable(symbol));
    }

    void parts_speak_the_language_of_the_user() {
        QLocale::setDefault(QLocale(QLocale::German));
        const auto german = app::load_parts();
        QLocale::setDefault(QLocale::c());
        const auto english = app::load_parts();
        QVERIFY(!german.isEmpty());
        QCOMPARE(german.size(), english.size());
        for (qsizetype i = 0; i < german.size(); ++i) {
            const auto preset = json::parse(german[i].preset.toStdString());
            QCOMPARE(german[i].name.toStdString(), preset["name_de"].get<std::string>());
            QCOMPARE(german[i].group.toStdString(), preset["group_de"].get<std::string>());
            QCOMPARE(english[i].group.toStdString(), preset["group"].get<std::string>());
        }
    }
};

HOWLMAP_TEST(PresetsTest)
#include "test_presets.moc"
