// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.still;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes an animated GIF that loops for ever, by the encoder that comes with Java. */
final class MovingPicture implements AutoCloseable {
    private static final String FORMAT = "javax_imageio_gif_image_1.0";

    private final ImageWriter writer;
    private final ImageOutputStream out;

    MovingPicture(OutputStream to) throws IOException {
        writer = ImageIO.getImageWritersByFormatName("gif").next();
        out = new MemoryCacheImageOutputStream(to);
        out.setByteOrder(java.nio.ByteOrder.LITTLE_ENDIAN);
        writer.setOutput(out);
        writer.prepareWriteSequence(null);
    }

    /**
     * Adds a picture.
     *
     * @param hundredths how long it stays, 1/100 s
     */
    void add(BufferedImage image, int hundredths) throws IOException {
        IIOMetadata data = writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), null);
        data.setFromTree(FORMAT, tree(data, hundredths));
        writer.writeToSequence(new IIOImage(image, null, data), null);
    }

    private static IIOMetadataNode tree(IIOMetadata data, int hundredths) throws IIOInvalidTreeException {
        IIOMetadataNode root = (IIOMetadataNode) data.getAsTree(FORMAT);
        IIOMetadataNode control = child(root, "GraphicControlExtension");
        control.setAttribute("disposalMethod", "none");
        control.setAttribute("userInputFlag", "FALSE");
        control.setAttribute("transparentColorFlag", "FALSE");
        control.setAttribute("delayTime", Integer.toString(hundredths));
        control.setAttribute("transparentColorIndex", "0");
        IIOMetadataNode loop = new IIOMetadataNode("ApplicationExtension");
        loop.setAttribute("applicationID", "NETSCAPE");
        loop.setAttribute("authenticationCode", "2.0");
        loop.setUserObject(new byte[] {1, 0, 0});
        child(root, "ApplicationExtensions").appendChild(loop);
        return root;
    }

    private static IIOMetadataNode child(IIOMetadataNode root, String name) {
        for (int i = 0; i < root.getLength(); i++) {
            if (root.item(i).getNodeName().equalsIgnoreCase(name)) {
                return (IIOMetadataNode) root.item(i);
            }
        }
        IIOMetadataNode made = new IIOMetadataNode(name);
        root.appendChild(made);
        return made;
    }

    @Override
    public void close() throws IOException {
        writer.endWriteSequence();
        out.close();
        writer.dispose();
    }
}
