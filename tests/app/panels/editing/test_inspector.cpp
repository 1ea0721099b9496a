// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>

#include "app/panels/inspector/field_row.h"
#include "app/panels/inspector/inspector_panel.h"
#include "app/panels/inspector/measured_directivity.h"
#include "app/panels/inspector/members_button.h"
#include "app/panels/inspector/number_table.h"
#include "app/panels/inspector/polar_plot.h"
#include "app/panels/inspector/tables.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/show/edits.h"
#include "core/show/find.h"
#include "tests/app/panels/editing/small_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;

class TestInspector : public QObject {
    Q_OBJECT
    Document document_;
    Selection selection_;

    static void type(FieldRow* row, const QString& text) {
        auto* edit = qobject_cast<QLineEdit*>(row->editor());
        QVERIFY(edit);
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    static void choose(FieldRow* row, const QString& text) {
        auto* box = qobject_cast<QComboBox*>(row->editor());
        QVERIFY(box);
        const int index = box->findText(text);
        QVERIFY(index >= 0);
        box->setCurrentIndex(index);
        Q_EMIT box->activated(index);
    }

  private Q_SLOTS:
    void init() {
        document_.replace(test::small_show(), {}, false);
        selection_.clear();
    }

    void a_length_is_typed_in_either_unit() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("w1")});
        FieldRow* height = panel.row(QStringLiteral("Height"));
        QVERIFY(height);
        type(height, QStringLiteral("1,07 m"));
        QCOMPARE(document_.show().loudspeakers[0].position.z, 1.07);
        type(height, QStringLiteral("3' 6\""));
        QVERIFY(std::abs(document_.show().loudspeakers[0].position.z - 1.0668) < 1e-9);
        QCOMPARE(document_.undo_stack().count(), 2);
    }

    void what_cannot_be_is_said_beside_the_field_and_changes_nothing() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("w1")});
        FieldRow* trim = panel.row(QStringLiteral("Trim"));
        type(trim, QStringLiteral("99"));
        QVERIFY(trim->trouble().contains(QStringLiteral("expected")));
        type(trim, QStringLiteral("loud"));
        QVERIFY(trim->trouble().contains(QStringLiteral("cannot be read")));
        QCOMPARE(document_.show(), test::small_show());
        QCOMPARE(document_.undo_stack().count(), 0);
        type(trim, QStringLiteral("-4.5 dB"));
        QVERIFY(trim->trouble().isEmpty());
        QCOMPARE(document_.show().loudspeakers[0].trim_db, -4.5);
    }

    void several_objects_are_edited_at_once_in_one_step() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("w1"), QStringLiteral("w2")});
        FieldRow* trim = panel.row(QStringLiteral("Trim"));
        QCOMPARE(qobject_cast<QLineEdit*>(trim->editor())->placeholderText(), QStringLiteral("several"));
        type(trim, QStringLiteral("-1"));
        QCOMPARE(document_.show().loudspeakers[0].trim_db, -1.0);
        QCOMPARE(document_.show().loudspeakers[1].trim_db, -1.0);
        QCOMPARE(document_.undo_stack().count(), 1);
    }

    void a_loudspeaker_may_play_several_mixes() {
        document_.edit(QStringLiteral("x"), [](Show& show) {
            Mix second = show.mixes[0];
            second.id = "m2";
            second.number = 2;
            second.name = "side";
            second.loudspeakers = {"w2", "w1"};
            show.mixes.push_back(second);
        });
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("w1")});
        auto* button = qobject_cast<MembersButton*>(panel.row(QStringLiteral("Mixes"))->editor());
        QVERIFY(button);
        QCOMPARE(button->accessibleDescription(), QStringLiteral("1  front, 2  side"));
        button->menu()->actions().at(0)->trigger();
        QTRY_VERIFY(document_.show().mixes[0].loudspeakers.empty());
        QCOMPARE(document_.show().mixes[1].loudspeakers, (std::vector<std::string>{"w2", "w1"}));
        QCOMPARE(button->accessibleDescription(), QStringLiteral("2  side"));
        selection_.set({QStringLiteral("w1"), QStringLiteral("w2")});
        button = qobject_cast<MembersButton*>(panel.row(QStringLiteral("Mixes"))->editor());
        button->menu()->actions().at(0)->trigger();
        QTRY_COMPARE(document_.show().mixes[0].loudspeakers, (std::vector<std::string>{"w1", "w2"}));
        QCOMPARE(document_.show().mixes[1].loudspeakers, (std::vector<std::string>{"w2", "w1"}));
    }

    void a_mix_says_which_loudspeakers_play_it() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("m1")});
        auto* button = qobject_cast<MembersButton*>(panel.row(QStringLiteral("Loudspeakers"))->editor());
        QCOMPARE(button->accessibleDescription(), QStringLiteral("wedge 1"));
        button->menu()->actions().at(1)->trigger();
        QTRY_COMPARE(document_.show().mixes[0].loudspeakers, (std::vector<std::string>{"w1", "w2"}));
        button->menu()->actions().at(0)->trigger();
        QTRY_COMPARE(document_.show().mixes[0].loudspeakers, (std::vector<std::string>{"w2"}));
    }

    void an_input_becomes_a_pickup_a_line_and_a_microphone() {
        InspectorPanel panel(document_, selection_);
        panel.show();
        selection_.set({QStringLiteral("vox")});
        const auto* tap = panel.findChild<QWidget*>(QStringLiteral("modes_from_taps"));
        QVERIFY(tap && !tap->isVisible());
        choose(panel.row(QStringLiteral("Kind")), QStringLiteral("pickup"));
        QVERIFY(pickup_of(document_.show().inputs[0]) && panel.row(QStringLiteral("Isolation")) && tap->isVisible());
        choose(panel.row(QStringLiteral("Kind")), QStringLiteral("line"));
        QVERIFY(is_line(document_.show().inputs[0]));
        auto* on_plan = qobject_cast<QCheckBox*>(panel.row(QStringLiteral("On the plan"))->editor());
        on_plan->click();
        QVERIFY(!document_.show().inputs[0].has_position);
        choose(panel.row(QStringLiteral("Kind")), QStringLiteral("microphone"));
        const Input& voice = document_.show().inputs[0];
        QVERIFY(microphone_of(voice) && voice.has_position);
        QCOMPARE(voice.position.xy(), document_.show().performers[0].position);
        QCOMPARE(read_show(write_show(document_.show()))->show, document_.show());
    }

    void the_seed_of_the_draws_is_typed() {
        InspectorPanel panel(document_, selection_);
        type(panel.row(QStringLiteral("Seed")), QStringLiteral("42"));
        QCOMPARE(document_.show().tolerance.seed, std::uint64_t{42});
    }

    void the_preset_of_a_loudspeaker_is_a_word() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("w1")});
        type(panel.row(QStringLiteral("Preset")), QStringLiteral("wedge 12"));
        QCOMPARE(document_.show().loudspeakers[0].preset, std::string("wedge 12"));
    }

    void what_is_locked_keeps_its_place_and_says_why() {
        document_.edit(QStringLiteral("x"), [](Show& show) { set_locked(show, {"w1", "vox"}, true); });
        InspectorPanel panel(document_, selection_);
        for (const char* id : {"w1", "vox"}) {
            selection_.set({QString::fromLatin1(id)});
            for (const char* label : {"Stage left", "Upstage", "Height", "Yaw", "Pitch"}) {
                const QWidget* editor = panel.row(QString::fromLatin1(label))->editor();
                QVERIFY2(!editor->isEnabled(), label);
                QVERIFY2(editor->toolTip().contains(QStringLiteral("locked")), label);
            }
            QVERIFY(panel.row(QStringLiteral("Polarity"))->editor()->isEnabled());
        }
        selection_.set({QStringLiteral("w1"), QStringLiteral("w2")});  // of two, the one that is free follows
        type(panel.row(QStringLiteral("Stage left")), QStringLiteral("1.5"));
        QCOMPARE(document_.show().loudspeakers[0].position.x, 0.0);
        QCOMPARE(document_.show().loudspeakers[1].position.x, 1.5);
        selection_.set({QStringLiteral("w1")});
        document_.edit(QStringLiteral("x"), [](Show& show) { set_locked(show, {"w1"}, false); });
        type(panel.row(QStringLiteral("Stage left")), QStringLiteral("0.5"));
        QCOMPARE(document_.show().loudspeakers[0].position.x, 0.5);
        QVERIFY(!panel.row(QStringLiteral("Stage left"))->editor()->toolTip().contains(QStringLiteral("locked")));
    }

    void fields_come_and_go_with_what_the_object_is() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("w1")});
        QVERIFY(panel.row(QStringLiteral("Horizontal")));
        QVERIFY(!panel.row(QStringLiteral("Cap radius")));
        choose(panel.row(QStringLiteral("Type")), QStringLiteral("cap on a sphere"));
        QVERIFY(std::holds_alternative<CapOnSphere>(document_.show().loudspeakers[0].directivity));
        QVERIFY(panel.row(QStringLiteral("Cap radius")));
        panel.show();
        selection_.set({QStringLiteral("fid")});  // a pickup: no title over the fields of a microphone
        for (const auto* label : panel.findChildren<QLabel*>())
            QVERIFY(!label->isVisible() || label->text() != QStringLiteral("Microphone"));
        selection_.set({QStringLiteral("w1")});
        QVERIFY(!panel.row(QStringLiteral("Horizontal")));
    }

    void kinds_are_called_as_the_parts_are() {
        Show show = test::small_show();
        Mark mark;
        mark.id = "box";
        mark.kind = "fog_machine";  // of a file that knows more
        show.marks = {mark};
        Backline amplifier;
        amplifier.id = "amp";
        amplifier.kind = "amplifier";
        show.backline = {amplifier};
        document_.replace(show, {}, false);
        InspectorPanel panel(document_, selection_);
        const auto shown = [&](const char* id) {
            selection_.set({QLatin1String(id)});
            return qobject_cast<QComboBox*>(panel.row(QStringLiteral("Kind"))->editor())->currentText();
        };
        QCOMPARE(shown("amp"), QStringLiteral("Guitar amplifier / Bass amplifier"));
        QCOMPARE(shown("box"), QStringLiteral("fog_machine"));
        choose(panel.row(QStringLiteral("Kind")), QStringLiteral("DI box"));
        QCOMPARE(document_.show().marks[0].kind, std::string("di_box"));
        QCOMPARE(shown("box"), QStringLiteral("DI box"));
    }

    void a_move_leaves_the_choices_as_they_are() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("w1")});
        const auto* box = qobject_cast<QComboBox*>(panel.row(QStringLiteral("Kind"))->editor());
        QSignalSpy filled(box->model(), &QAbstractItemModel::rowsInserted);
        document_.edit(QStringLiteral("Move"), [](Show& show) { show.loudspeakers[0].position.x += 1.0; });
        QVERIFY(filled.empty());
        document_.edit(QStringLiteral("Change"),
                       [](Show& show) { show.loudspeakers[0].kind = LoudspeakerKind::side_fill; });
        QCOMPARE(box->currentText(), QStringLiteral("side fill"));
    }

    void a_kind_that_comes_is_a_choice() {
        Show show = test::small_show();
        show.marks = {Mark{}, Mark{}};
        show.marks[0].id = "one";
        show.marks[1].id = "two";
        document_.replace(show, {}, false);
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("one")});
        const auto* box = qobject_cast<QComboBox*>(panel.row(QStringLiteral("Kind"))->editor());
        QCOMPARE(box->findText(QStringLiteral("fog_machine")), -1);
        document_.edit(QStringLiteral("Change"), [](Show& after) { after.marks[1].kind = "fog_machine"; });
        QVERIFY(box->findText(QStringLiteral("fog_machine")) >= 0);
    }

    void an_absent_value_is_an_empty_field() {
        InspectorPanel panel(document_, selection_);
        selection_.set({QStringLiteral("vox")});
        FieldRow* high_pass = panel.row(QStringLiteral("High-pass"));
        type(high_pass, QStringLiteral("120"));
        QCOMPARE(document_.show().inputs[0].high_pass->hz, 120.0);
        auto* edit = qobject_cast<QLineEdit*>(high_pass->editor());
        edit->selectAll();
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClick(edit, Qt::Key_Return);
        QVERIFY(!document_.show().inputs[0].high_pass);
    }

    void nothing_selected_is_the_show() {
        InspectorPanel panel(document_, selection_);
        type(panel.row(QStringLiteral("Back wall")), QStringLiteral("6 m"));
        QCOMPARE(document_.show().stage.surfaces.back->at, 6.0);
        QVERIFY(panel.row(QStringLiteral("Back wall absorbs")));
        type(panel.row(QStringLiteral("Title")), QStringLiteral("Long night"));
        QCOMPARE(document_.show().title, std::string("Long night"));
        choose(panel.row(QStringLiteral("Lengths in")), QStringLiteral("feet and inches"));
        QVERIFY(qobject_cast<QLineEdit*>(panel.row(QStringLiteral("Back wall"))->editor())
                    ->text()
                    .startsWith(QStringLiteral("19")));  // 6 m are 19 feet 8 inches
    }

    void every_field_survives_being_set_to_what_it_is() {
        for (const char* id : {"w1", "vox", "fid", "ada", "m1", ""}) {
            Show show = test::small_show();
            const Fields fields = *id == 'w'   ? loudspeaker_fields()
                                  : *id == 'a' ? performer_fields()
                                  : *id == 'm' ? mix_fields()
                                  : *id        ? input_fields()
                                               : show_fields();
            for (const Field& field : fields)
                if (const auto value = field.get(show, id)) field.set(show, id, *value);
            QCOMPARE(show, test::small_show());
        }
    }

    void tables_refuse_what_does_not_fit_and_name_the_row() {
        const auto tables = tables_of(document_.show(), QStringLiteral("fid"));
        NumberTableModel modes(tables.first(), document_, nullptr);
        QString said;
        connect(&modes, &NumberTableModel::trouble, &modes, [&](const QString& text) { said = text; });
        QVERIFY(modes.paste(QStringLiteral("Hz;Q;dB;air\n275,5;15;0;1\n470;25;-1;0\n")));
        const auto& kept = pickup_of(document_.show().inputs[1])->modes;
        QCOMPARE(kept.size(), std::size_t{2});
        QCOMPARE(kept[0].hz, 275.5);
        QVERIFY(kept[0].air);
        QVERIFY(!modes.paste(QStringLiteral("275;15;0;1\n470;-25;-1;0\n")));
        QVERIFY2(said.contains(QStringLiteral("row 2")), qPrintable(said));
        QCOMPARE(pickup_of(document_.show().inputs[1])->modes.size(), std::size_t{2});
        const auto corners = tables_of(document_.show(), {});
        NumberTableModel stage(corners.first(), document_, nullptr);
        connect(&stage, &NumberTableModel::trouble, &stage, [&](const QString& text) { said = text; });
        QVERIFY(!stage.paste(QStringLiteral("0 0\n4 4\n4 0\n0 4\n")));
        QVERIFY(said.contains(QStringLiteral("do not cross")));
    }

    void a_measured_directivity_is_pasted_and_drawn() {
        document_.edit(QStringLiteral("x"), [](Show& show) {
            show.loudspeakers[0].directivity = DirectivityTable{{0, 180}, {1000}, {{0, 0}}, {}};
        });
        MeasuredDirectivity measured(document_, QStringLiteral("w1"));
        QVERIFY(measured.take(QStringLiteral("Hz,0,90,180\n500,0,-3,-10\n2000,0,-6,-20\n")));
        const auto curve = polar_of(document_.show(), "w1", 2000.0);
        QVERIFY(curve);
        for (std::size_t i = 0; i < curve->db.size(); ++i)
            if (curve->angles_deg[i] == 90.0) QVERIFY(std::abs(curve->db[i] + 6.0) < 1e-9);
        QVERIFY(!measured.take(QStringLiteral("Hz,0,90,180\n500,0,-3\n")));
    }

    void a_cardioid_has_its_null_behind() {
        const auto curve = polar_of(document_.show(), "vox", 1000.0);
        QVERIFY(curve);
        QVERIFY(curve->db.front() < -100.0);                        // -180 degrees
        QVERIFY(std::abs(curve->db[curve->db.size() / 2]) < 1e-9);  // on axis
    }
    /// It may still be telling of a change when it is put away; the show may be gone by the next event.
    void whatWasShownDoesNotOutliveThePanel() {
        auto panel = std::make_unique<InspectorPanel>(document_, selection_);
        const QPointer<QWidget> shown = panel->widget();
        document_.replace(test::small_show(), {}, false);
        QVERIFY(shown && panel->widget() != shown);
        panel.reset();
        QVERIFY(!shown);
    }
};

HOWLMAP_TEST(TestInspector)
#include "test_inspector.moc"
