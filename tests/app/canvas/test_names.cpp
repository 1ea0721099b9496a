// SPDX-License-Identifier: GPL-3.0-or-later
// Names on the plan of every example, in windows of the usual sizes, light and dark: none lies on another, on an
// object, on the words around the stage or on the scale bar, none is cut off, and none is left out.
#include <QDir>

#include "app/canvas/items/object_item.h"
#include "app/canvas/plan_furniture.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/export/ground.h"
#include "app/settings/theme.h"
#include "app/window/file_actions.h"
#include "app/window/first_start.h"
#include "app/window/main_window.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// A rectangle on the screen and what it is.
struct Taken {
    QString what;
    QRectF box;
};

class NamesOnScreen {
  public:
    explicit NamesOnScreen(PlanView& plan) : plan_(plan) {}

    QList<Taken> names() const {
        QList<Taken> found;
        const double px = style().px;
        for (const QString& id : plan_.plan_scene().ids()) {
            const LabelItem* label = plan_.plan_scene().names()[id];
            const QRectF& r = label->place().rect;
            if (!r.isEmpty() && in_view(id))
                found.append({label->text(), on_screen({r.topLeft() * px, r.size() * px})});
        }
        return found;
    }
    QList<Taken> words() const {
        QList<Taken> found;
        for (const QRectF& box : stage_word_boxes(plan_.document().show(), style()))
            if (const QRectF there = on_screen(box); there.intersects(port()))
                found.append({QStringLiteral("words"), there});
        return found;
    }
    QList<Taken> objects() const {
        QList<Taken> found;
        for (const QString& id : plan_.plan_scene().ids())
            if (const ObjectLook& look = plan_.plan_scene().look(id); look.kind != ObjectKind::riser)
                found.append({QStringLiteral("object ") + look.label, on_screen(bounds_of(look, style()))});
        return found;
    }
    QList<Taken> furniture() const {
        QList<Taken> found;
        for (const QRectF& box : plan_.findChild<PlanFurniture*>()->boxes())
            found.append({QStringLiteral("scale bar"), box});
        return found;
    }
    QRectF port() const { return plan_.viewport()->rect(); }

    QStringList faults() const {
        QStringList faults = clashes(names(), names(), true) + clashes(words(), words(), true);
        for (const QList<Taken>& others : {words(), objects(), furniture()}) faults += clashes(names(), others, false);
        faults += clashes(words(), furniture(), false);
        for (const Taken& one : names() + words())
            if (!port().contains(one.box)) faults.append(one.what + QStringLiteral(" is cut off"));
        return faults + on_edges() + left_out();
    }

  private:
    const PlanStyle& style() const { return plan_.plan_scene().style(); }
    QRectF on_screen(const QRectF& page) const { return plan_.viewportTransform().mapRect(page); }

    /// In the pixels of the places of names.
    QList<QLineF> sides_of_risers() const {
        QList<QLineF> sides;
        for (const QString& id : plan_.plan_scene().ids()) {
            const QPolygonF& outline = plan_.plan_scene().look(id).outline;
            for (qsizetype i = 0; i < outline.size(); ++i)
                sides.append({outline[i] / style().px, outline[(i + 1) % outline.size()] / style().px});
        }
        return sides;
    }
    static bool crosses(const QLineF& line, const QRectF& box) {
        return QRectF(line.p1(), line.p2()).normalized().adjusted(-0.1, -0.1, 0.1, 0.1).intersects(box);
    }
    static QStringList clashes(const QList<Taken>& some, const QList<Taken>& others, bool same) {
        QStringList found;
        for (qsizetype i = 0; i < some.size(); ++i)
            for (qsizetype k = same ? i + 1 : 0; k < others.size(); ++k)
                if (some[i].box.intersects(others[k].box))
                    found.append(some[i].what + QStringLiteral(" on ") + others[k].what);
        return found;
    }
    /// A name lies inside a riser or beside it, not across its edge.
    QStringList on_edges() const {
        QStringList found;
        for (const QString& id : plan_.plan_scene().ids()) {
            const LabelItem* label = plan_.plan_scene().names()[id];
            if (label->place().rect.isEmpty()) continue;
            for (const QLineF& side : sides_of_risers())
                if (crosses(side, label->place().rect))
                    found.append(label->text() + QStringLiteral(" on the edge of a riser"));
        }
        return found;
    }
    /// Places in the house may lie outside.
    bool in_view(const QString& id) const {
        return port().contains(on_screen(bounds_of(plan_.plan_scene().look(id), style())));
    }
    QStringList left_out() const {
        QStringList found;
        for (const QString& id : plan_.plan_scene().ids()) {
            const ObjectLook& look = plan_.plan_scene().look(id);
            const LabelItem* label = plan_.plan_scene().names()[id];
            const bool shown = !label->place().rect.isEmpty() && label->text() == look.label;
            if (!look.label.isEmpty() && in_view(id) && !shown)
                found.append(look.label + QStringLiteral(" has no name"));
        }
        return found;
    }

    PlanView& plan_;
};

}  // namespace

class TestNames : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void names_stand_clear_data();
    void names_stand_clear();
    void while_the_hand_moves_other_names_stay();
};

void TestNames::names_stand_clear_data() {
    QTest::addColumn<QString>("example");
    QTest::addColumn<QSize>("size");
    QTest::addColumn<bool>("dark");
    for (const QString& name : QDir(QStringLiteral(":/examples")).entryList({QStringLiteral("*.howlmap")}))
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)})
            for (const bool dark : {false, true})
                QTest::newRow(qPrintable(QStringLiteral("%1-%2-%3")
                                             .arg(name.chopped(8))
                                             .arg(size.width())
                                             .arg(dark ? QStringLiteral("dark") : QStringLiteral("light"))))
                    << QStringLiteral(":/examples/") + name << size << dark;
}

void TestNames::names_stand_clear() {
    QFETCH(const QString, example);
    QFETCH(const QSize, size);
    QFETCH(const bool, dark);
    apply_look(dark ? Look::dark : Look::light);
    MainWindow window;
    window.resize(size);
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    QVERIFY(window.files().open_example(example));
    window.findChild<CautionStrip*>()->hide();  // as after the first start
    window.findChild<TourStrip*>()->hide();
    QCoreApplication::processEvents();
    if (const QString folder = qEnvironmentVariable("HOWLMAP_PICTURES"); !folder.isEmpty()) {
        QTest::qWait(1500);
        window.grab().save(QDir(folder).filePath(QLatin1StringView(QTest::currentDataTag()) + QStringLiteral(".png")));
    }
    const NamesOnScreen screen(window.plan());
    QVERIFY(screen.names().size() > 3);
    QVERIFY(screen.words().size() >= 4);
    const QStringList faults = screen.faults();
    window.document().set_clean();
    apply_look(Look::light);
    QVERIFY2(faults.isEmpty(), qPrintable(u'\n' + faults.join(u'\n')));
}

void TestNames::while_the_hand_moves_other_names_stay() {
    MainWindow window;
    window.resize(1280, 800);
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    QVERIFY(window.files().open_example(QStringLiteral(":/examples/sixteen-inputs.howlmap")));
    window.findChild<CautionStrip*>()->hide();
    window.findChild<TourStrip*>()->hide();
    QCoreApplication::processEvents();
    PlanScene& scene = window.plan().plan_scene();
    const auto places = [&] {
        QMap<QString, QRectF> all;
        for (const QString& id : scene.ids()) all[id] = scene.names()[id]->place().rect;
        return all;
    };
    const auto before = places();
    window.document().begin_gesture(QStringLiteral("Move"));
    window.document().update_gesture([](Show& show) { show.loudspeakers.front().position.x += 0.5; });
    QCoreApplication::processEvents();
    auto during = places();
    const QString moved = QString::fromStdString(window.document().show().loudspeakers.front().id);
    const double way = 0.5 / scene.style().px;
    QVERIFY(std::abs(during[moved].x() - before[moved].x() - way) < 1e-6);
    during[moved] = before[moved];
    QCOMPARE(during, before);
    window.document().end_gesture();
    QCoreApplication::processEvents();
    const QStringList faults = NamesOnScreen(window.plan()).faults();
    QVERIFY2(faults.isEmpty(), qPrintable(faults.join(u'\n')));
    window.document().set_clean();
}

HOWLMAP_TEST(TestNames)

}  // namespace howlmap::app

#include "test_names.moc"
