// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/canvas/drawing.h"

#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>

#include "app/canvas/plan_view.h"
#include "app/panels/inputs/inputs_model.h"
#include "app/panels/inputs/inputs_panel.h"
#include "app/panels/mixes/mixes_panel.h"
#include "app/panels/mixes/sends_model.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

/// Words for the search of Parts that leave the wanted one first, by the ids of the example.
QString words_for_part(const std::string& id) {
    static const std::map<std::string, const char*> words{
        {"ines", "singer woman"},
        {"yara", "fiddler"},
        {"rolf", "singer man"},
        {"sven", "guitarist standing"},
        {"greta", "player in-ears"},
        {"bo", "drummer"},
        {"wedge-1", "wedge 15 narrow"},
        {"wedge-2", "wedge 12 narrow"},
        {"wedge-3", "wedge 12 narrow"},
        {"wedge-4", "wedge 12 narrow"},
        {"side-l", "side fill"},
        {"side-r", "side fill"},
        {"drum-fill", "drum fill"},
        {"main-l", "main hang"},
        {"main-r", "main hang"},
        {"sub", "sub 18"},
        {"front-fill", "front fill"},
        {"kick", "kick drum micro"},
        {"snare", "snare"},
        {"tom", "tom micro"},
        {"oh-l", "overhead"},
        {"oh-r", "overhead"},
        {"bass", "electric bass"},
        {"gtr-amp", "instrument dynamic cardioid"},
        {"ac-guitar", "steel magnetic"},
        {"keys-l", "piano synth"},
        {"keys-r", "piano synth"},
        {"fiddle", "violin bridge"},
        {"voice-1", "vocal micro supercardioid"},
        {"voice-2", "vocal micro cardioid"},
        {"voice-3", "vocal micro cardioid"},
        {"voice-4", "vocal micro cardioid"},
        {"playback", "playback"},
        {"kit", "drum kit sticks"},
        {"amp-sven", "guitar amplifier"},
        {"rig-greta", "keyboards stand"},
        {"row-1", "listener seated"},
        {"desk", "listener seated"},
        {"riser-drums", "riser 3"},
        {"riser-keys", "riser 2 x 2"},
    };
    const auto found = words.find(id);
    return found == words.end() ? QString() : QString::fromLatin1(found->second);
}

}  // namespace

/// What differs is typed into the inspector, in the order in which it stands there.
void Drawing::fill_in(const Fields& fields, const std::string& wanted_id, const QStringList& later) {
    const std::string id = selected();
    for (const Field& field : fields) {
        if (QTest::currentTestFailed()) return;
        const auto wanted = field.get(wanted_, wanted_id), now = field.get(show(), id);
        if (!wanted || !now || later.contains(field.label)) continue;
        const QVariant value = field.kind == FieldKind::choice    ? names_.to_drawn(*wanted)
                               : field.kind == FieldKind::members ? names_.to_drawn(wanted->toStringList())
                                                                  : *wanted;
        if (value == *now) continue;
        hands_.enter(field, value);
        const auto after = field.get(show(), id);
        QVERIFY2(after && *after == value,
                 qPrintable(QStringLiteral("%1 of %2: %3 instead of %4")
                                .arg(field.label, QString::fromStdString(wanted_id),
                                     after.value_or(QVariant()).toString(), value.toString())));
    }
}

void Drawing::fill_in_tables(const std::string& wanted_id) {
    const QString id = QString::fromStdString(selected());
    for (const NumberTableSource& source : tables_of(wanted_, QString::fromStdString(wanted_id))) {
        const auto rows = source.get(wanted_);
        if (!rows) continue;
        for (const NumberTableSource& drawn : tables_of(show(), id))
            if (drawn.title == source.title && drawn.get(show()) != rows) hands_.enter_rows(source.title, *rows);
    }
}

/// Pulls corner after corner to its place, each along with the pointer.
void Drawing::corners(const std::string& drawn_id, const Outline& outline) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 from = (*outline_of(show(), drawn_id))[i];
        if (!(from == outline[i])) hands_.drag_on_plan(from, outline[i]);
        const Vec2 now = (*outline_of(show(), drawn_id))[i];
        QVERIFY2(now == outline[i], qPrintable(QStringLiteral("corner %1 of %2 is at %3, %4")
                                                   .arg(i)
                                                   .arg(QString::fromStdString(drawn_id))
                                                   .arg(now.x)
                                                   .arg(now.y)));
    }
}

void Drawing::stage() {
    hands_.press(QKeySequence::New);
    hands_.press(QKeySequence(Qt::Key_O));
    corners({}, wanted_.stage.outline);
    hands_.press(QKeySequence(Qt::Key_V));
    fill_in(show_fields(), {});
    fill_in_tables({});
}

void Drawing::place(const std::string& id, Vec2 at, Way way) { place_words(id, words_for_part(id), at, way); }

void Drawing::place_words(const std::string& id, const QString& words, Vec2 at, Way way) {
    if (QTest::currentTestFailed()) return;
    QVERIFY2(!words.isEmpty(), id.c_str());
    const int before = window_.document().undo_stack().count();
    if (way == Way::drop) hands_.place_by_drop(words, at);
    if (way == Way::enter) hands_.place_by_enter(words);
    if (way == Way::double_click) hands_.place_by_double_click(words);
    QVERIFY2(window_.document().undo_stack().count() == before + 1, id.c_str());
    QCOMPARE(window_.selection().ids().size(), 1);
    names_.add(selected(), id);
    if (way != Way::drop) move_to(at);
}

/// By the mouse, as near as snapping brings it; the inspector does the rest.
void Drawing::move_to(Vec2 at) {
    const auto now = placed_object(show(), selected());
    if (now && now->kind == ObjectKind::loudspeaker) hands_.drag_on_plan(now->position, at);
}

void Drawing::risers() {
    for (const Riser& riser : wanted_.stage.risers) {
        const Vec2 middle = (riser.outline[0] + riser.outline[2]) * 0.5;
        place(riser.id, middle, Way::drop);
        corners(selected(), riser.outline);
        fill_in(riser_fields(), riser.id);
    }
}

void Drawing::players() {
    for (const Performer& player : wanted_.performers) {
        place(player.id, player.position, Way::drop);
        fill_in(performer_fields(), player.id, {QStringLiteral("Mix")});
    }
}

/// Wedges first guess whom they serve, and so open the first mixes.
void Drawing::loudspeakers() {
    for (const Loudspeaker& speaker : wanted_.loudspeakers) {
        place(speaker.id, speaker.position.xy(), speaker.kind == LoudspeakerKind::main ? Way::double_click : Way::drop);
        fill_in(loudspeaker_fields(), speaker.id, {QStringLiteral("Mixes")});
    }
}

void Drawing::inputs() {
    const QStringList later{QStringLiteral("Stand"), QStringLiteral("48 V phantom"), QStringLiteral("DI box")};
    for (const Input& input : wanted_.inputs) {
        place(input.id, input.position.xy(), is_line(input) ? Way::enter : Way::drop);
        fill_in(input_fields(), input.id, later);
        fill_in_tables(input.id);
    }
}

void Drawing::the_rest() {
    for (const Backline& item : wanted_.backline) {
        place(item.id, item.position.xy(), Way::drop);
        fill_in(backline_fields(), item.id);
    }
    for (const Listener& listener : wanted_.listeners) {
        place(listener.id, listener.position.xy(), Way::enter);
        fill_in(listener_fields(), listener.id);
    }
    for (const Mark& mark : wanted_.marks) {
        place_words(mark.id, QString::fromStdString(mark.kind).replace(u'_', u' '), mark.position, Way::drop);
        fill_in(mark_fields(), mark.id);
    }
}

void Drawing::mixes() {
    auto* panel = qobject_cast<MixesPanel*>(hands_.panel("mixes"));
    QVERIFY(panel);
    for (std::size_t i = 0; i < wanted_.mixes.size(); ++i) {
        hands_.panel("mixes");
        if (i == show().mixes.size()) hands_.click_button(panel, MixesPanel::tr("Add mix"));
        auto* header = panel->findChild<QTableView*>()->horizontalHeader();
        const int column = static_cast<int>(i);
        panel->findChild<QTableView*>()->scrollTo(panel->findChild<QTableView*>()->model()->index(0, column));
        hands_.click(header->viewport(), {header->sectionViewportPosition(column) + 10, header->height() / 2});
        QCOMPARE(window_.selection().ids().value(0).toStdString(), show().mixes[i].id);
        names_.add(selected(), wanted_.mixes[i].id);
        fill_in(mix_fields(), wanted_.mixes[i].id);
    }
    const auto mix_field = [](const Fields& fields) {
        Fields only;
        for (const Field& field : fields)
            if (field.label == QStringLiteral("Mix") || field.label == QStringLiteral("Mixes")) only.append(field);
        return only;
    };
    hands_.panel("parts");
    for (const Loudspeaker& speaker : wanted_.loudspeakers) {
        for (int i = 0; i < 8 && selected() != names_.drawn(speaker.id).toStdString(); ++i)
            hands_.click_on_plan(speaker.position.xy());
        QCOMPARE(selected(), names_.drawn(speaker.id).toStdString());
        fill_in(mix_field(loudspeaker_fields()), speaker.id);
    }
    for (const Performer& player : wanted_.performers) {
        // A click again goes to what lies beneath: a player stands behind microphone and instrument.
        for (int i = 0; i < 8 && selected() != names_.drawn(player.id).toStdString(); ++i)
            hands_.click_on_plan(player.position);
        QCOMPARE(selected(), names_.drawn(player.id).toStdString());
        fill_in(mix_field(performer_fields()), player.id);
    }
}

void Drawing::sends() {
    auto* panel = qobject_cast<MixesPanel*>(hands_.panel("mixes"));
    QVERIFY(panel);
    auto* table = panel->findChild<QTableView*>();
    auto* model = panel->findChild<SendsModel*>();
    for (const Mix& mix : wanted_.mixes)
        for (const Send& send : mix.sends)
            hands_.enter_cell(*table, model->cell_of(names_.drawn(mix.id), names_.drawn(send.input)),
                              QString::number(send.level_db));
}

void Drawing::input_list() {
    auto* panel = qobject_cast<InputsPanel*>(hands_.panel("inputs"));
    QVERIFY(panel);
    auto* table = panel->findChild<QTableView*>();
    auto* model = panel->findChild<InputsModel*>();
    for (const Input& input : wanted_.inputs) {
        const Input& now = *find_by_id(show().inputs, names_.drawn(input.id).toStdString());
        const auto cell = [&](InputsModel::Column column) {
            return model->index(model->row_of(names_.drawn(input.id)), column);
        };
        if (now.stand != input.stand)
            hands_.enter_cell(*table, cell(InputsModel::stand), QString::fromStdString(input.stand));
        if (now.phantom != input.phantom) hands_.tick_cell(*table, cell(InputsModel::phantom));
        if (now.di != input.di) hands_.tick_cell(*table, cell(InputsModel::di));
    }
}

}  // namespace howlmap::app
