// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/lesson_file.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QSet>

namespace howlmap::app {
namespace {

constexpr int kVersion = 1;

struct Refused {
    QString sentence;
};

/// A value of the file with its JSON pointer, so that every refusal can say where.
class Place {
  public:
    Place(QJsonValue value, QString pointer) : value_(std::move(value)), pointer_(std::move(pointer)) {}

    [[noreturn]] void refuse(const QString& expected) const {
        const QString found =
            value_.isUndefined()
                ? QCoreApplication::translate("lesson", "nothing")
                : QString::fromUtf8(
                      QJsonDocument(QJsonArray{value_}).toJson(QJsonDocument::Compact).mid(1).chopped(1).left(60));
        throw Refused{QCoreApplication::translate("lesson", "%1: found %2, expected %3")
                          .arg(pointer_.isEmpty() ? QStringLiteral("/") : pointer_, found, expected)};
    }
    QJsonObject object(const QSet<QString>& keys = {}) const {
        if (!value_.isObject()) refuse(QStringLiteral("an object"));
        for (const QString& key : value_.toObject().keys())
            if (!keys.isEmpty() && !keys.contains(key))
                at(key).refuse(QStringLiteral("one of the keys ") + QStringList(keys.values()).join(u' '));
        return value_.toObject();
    }
    Place at(const QString& key) const { return {object().value(key), pointer_ + u'/' + key}; }
    bool has(const QString& key) const { return object().contains(key); }
    std::vector<Place> items() const {
        if (!value_.isArray() || value_.toArray().isEmpty()) refuse(QStringLiteral("a list with something in it"));
        std::vector<Place> out;
        for (const QJsonValue& item : value_.toArray())
            out.push_back({item, pointer_ + u'/' + QString::number(out.size())});
        return out;
    }
    QString text() const {
        if (!value_.isString() || value_.toString().isEmpty()) refuse(QStringLiteral("a text"));
        return value_.toString();
    }
    double number() const {
        if (!value_.isDouble()) refuse(QStringLiteral("a number"));
        return value_.toDouble();
    }
    QString text_in(const QString& language) const {
        object({QStringLiteral("en"), QStringLiteral("de")});
        const QString english = at(QStringLiteral("en")).text();
        return has(language) ? at(language).text() : english;
    }

  private:
    QJsonValue value_;
    QString pointer_;
};

KnobValues knobs(const Place& place) {
    KnobValues out;
    for (const QString& key : place.object().keys()) {
        const auto knob = knob_named(key.toStdString());
        if (!knob) place.at(key).refuse(QStringLiteral("the name of a knob"));
        const double value = place.at(key).number();
        const KnobRange& range = range_of(*knob);
        if (value < range.least || value > range.most)
            place.at(key).refuse(QStringLiteral("a number from %1 to %2").arg(range.least).arg(range.most));
        out[*knob] = value;
    }
    return out;
}

LessonStep step(const Place& place, const QString& language) {
    place.object({QStringLiteral("text"), QStringLiteral("state")});
    LessonStep out{place.at(QStringLiteral("text")).text_in(language), {}};
    if (place.has(QStringLiteral("state"))) out.state = knobs(place.at(QStringLiteral("state")));
    return out;
}

Condition condition(const Place& place) {
    const auto least = QStringLiteral("at_least"), most = QStringLiteral("at_most");
    place.object({QStringLiteral("figure"), least, most});
    Condition out;
    out.figure = place.at(QStringLiteral("figure")).text().toStdString();
    if (!is_figure(out.figure)) place.at(QStringLiteral("figure")).refuse(QStringLiteral("the name of a figure"));
    if (place.has(least)) out.least = place.at(least).number();
    if (place.has(most)) out.most = place.at(most).number();
    if (!out.least && !out.most) place.refuse(QStringLiteral("at_least, at_most or both"));
    return out;
}

void read_task(Lesson& out, const Place& place, const QString& language) {
    place.object(
        {QStringLiteral("text"), QStringLiteral("hint"), QStringLiteral("conditions"), QStringLiteral("solution")});
    out.task = place.at(QStringLiteral("text")).text_in(language);
    out.hint = place.at(QStringLiteral("hint")).text_in(language);
    for (const Place& item : place.at(QStringLiteral("conditions")).items()) out.conditions.push_back(condition(item));
    out.solution = knobs(place.at(QStringLiteral("solution")));
}

Lesson lesson(const Place& root, const QString& language) {
    root.object({QStringLiteral("format"), QStringLiteral("version"), QStringLiteral("id"), QStringLiteral("title"),
                 QStringLiteral("state"), QStringLiteral("steps"), QStringLiteral("task")});
    if (root.at(QStringLiteral("format")).text() != u"howlmap-lesson")
        root.at(QStringLiteral("format")).refuse(QStringLiteral("\"howlmap-lesson\""));
    if (root.at(QStringLiteral("version")).number() != kVersion)
        root.at(QStringLiteral("version")).refuse(QString::number(kVersion));
    Lesson out;
    out.id = root.at(QStringLiteral("id")).text();
    out.title = root.at(QStringLiteral("title")).text_in(language);
    out.state = knobs(root.at(QStringLiteral("state")));
    for (const Place& item : root.at(QStringLiteral("steps")).items()) out.steps.push_back(step(item, language));
    read_task(out, root.at(QStringLiteral("task")), language);
    return out;
}

}  // namespace

tl::expected<Lesson, QString> read_lesson(const QByteArray& json, const QString& language) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(json, &error);
    if (document.isNull())
        return tl::unexpected(
            QCoreApplication::translate("lesson", "at byte %1: %2").arg(error.offset).arg(error.errorString()));
    try {
        const QJsonValue root = document.isObject() ? QJsonValue(document.object()) : QJsonValue(document.array());
        return lesson(Place(root, QString()), language);
    } catch (const Refused& refused) {
        return tl::unexpected(refused.sentence);
    }
}

std::vector<Lesson> shipped_lessons(QStringList* errors) {
    const QDir folder(QStringLiteral(":/lessons"));
    const QString language = QLocale().name().section(u'_', 0, 0);
    std::vector<Lesson> out;
    for (const QString& name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) continue;
        auto read = read_lesson(file.readAll(), language);
        if (read)
            out.push_back(std::move(*read));
        else if (errors)
            errors->append(name + QStringLiteral(": ") + read.error());
    }
    return out;
}

Bench bench_with(const KnobValues& state, Bench bench) {
    // What an instrument is comes before what can be done to it.
    if (const auto body = state.find(Knob::body); body != state.end()) turn(bench, Knob::body, body->second);
    for (const auto& [knob, value] : state) turn(bench, knob, value);
    return bench;
}

}  // namespace howlmap::app
