// SPDX-License-Identifier: GPL-3.0-or-later
// Symbols are to scale around their acoustic centre and can be recoloured; each has a simplified twin. Icons share one
// style.
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QSvgRenderer>

#include "tests/support/registry.h"

namespace {

QDir folder_of_drawings(const char* name) {
    return QDir(QStringLiteral(HOWLMAP_SOURCE_DIR "/resources/") + QLatin1String(name));
}

QByteArray content(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

QStringList values_of(const QByteArray& svg, const char* attribute) {
    QStringList values;
    const QRegularExpression pattern(QStringLiteral("\\s%1=\"([^\"]*)\"").arg(QLatin1String(attribute)));
    for (auto it = pattern.globalMatch(QString::fromUtf8(svg)); it.hasNext();) values << it.next().captured(1);
    values.removeDuplicates();
    return values;
}

void add_rows(const char* name) {
    QTest::addColumn<QString>("path");
    for (const QString& file : folder_of_drawings(name).entryList({QStringLiteral("*.svg")}))
        QTest::newRow(qPrintable(file)) << folder_of_drawings(name).filePath(file);
}

}  // namespace

class DrawingsTest : public QObject {
    Q_OBJECT

  private Q_SLOTS:
    void symbols_data() { add_rows("symbols"); }

    void symbols() {
        QFETCH(QString, path);
        const QByteArray svg = content(path);
        QSvgRenderer renderer(svg);
        QVERIFY(renderer.isValid());
        QVERIFY(renderer.viewBoxF().contains(QPointF(0.0, 0.0)));
        QVERIFY2(renderer.viewBoxF().width() < 3000.0, "the view box is in millimetres");
        QCOMPARE(values_of(svg, "stroke"), QStringList{QStringLiteral("#000")});
        QCOMPARE(values_of(svg, "fill"), QStringList{QStringLiteral("none")});
        if (path.endsWith(u"-small.svg")) return;
        QString twin = path;
        twin.replace(QStringLiteral(".svg"), QStringLiteral("-small.svg"));
        QCOMPARE(QSvgRenderer(twin).viewBoxF(), renderer.viewBoxF());
    }

    void icons_data() { add_rows("icons"); }

    void icons() {
        QFETCH(QString, path);
        const QByteArray svg = content(path);
        QVERIFY(QSvgRenderer(svg).isValid());
        if (path.endsWith(u"org.howlmap.Howlmap.svg")) return;  // the application's own icon has colours
        QCOMPARE(values_of(svg, "viewBox"), QStringList{QStringLiteral("0 0 24 24")});
        QCOMPARE(values_of(svg, "stroke"), QStringList{QStringLiteral("#000")});
    }
};

HOWLMAP_TEST(DrawingsTest)
#include "test_drawings.moc"
